using Google.Protobuf;

namespace WearWatch.Plant.Sparkplug;

/// <summary>The payload of Sparkplug B: a message of Protocol Buffers.</summary>
/// <param name="At">When it was published, by the node's clock; null where it does not say.</param>
/// <param name="Seq">The number of the message, 0 to 255; null where it has none.</param>
/// <param name="Metrics">What it tells.</param>
public sealed record SparkplugPayload(DateTimeOffset? At, int? Seq, IReadOnlyList<SparkplugMetric> Metrics)
{
    /// <summary>The name of the metric that numbers a node's sessions.</summary>
    public const string Session = "bdSeq";

    /// <summary>The metric by which a host asks for births.</summary>
    private const string Rebirth = "Node Control/Rebirth";

    private const int BooleanType = 11;

    /// <summary>The session that a birth or a death is of; null where it does not say.</summary>
    public long? BdSeq => Metrics.FirstOrDefault(m => m.Name == Session)?.Raw is ulong number ? unchecked((long)number) : null;

    /// <summary>Reads a payload; null when it is none.</summary>
    public static SparkplugPayload? Read(ReadOnlyMemory<byte> payload)
    {
        try
        {
            return Read(new CodedInputStream(payload.ToArray()));
        }
        catch (Exception e) when (e is InvalidProtocolBufferException or ArgumentOutOfRangeException)
        {
            return null;
        }
    }

    /// <summary>The command that asks a node for its births.</summary>
    public static byte[] AskForBirth(DateTimeOffset now)
    {
        var metric = Written(output =>
        {
            output.WriteTag(PayloadField.MetricName, WireFormat.WireType.LengthDelimited);
            output.WriteString(Rebirth);
            output.WriteTag(PayloadField.MetricTime, WireFormat.WireType.Varint);
            output.WriteUInt64((ulong)now.ToUnixTimeMilliseconds());
            output.WriteTag(PayloadField.DataType, WireFormat.WireType.Varint);
            output.WriteUInt32(BooleanType);
            output.WriteTag(PayloadField.Boolean, WireFormat.WireType.Varint);
            output.WriteBool(true);
        });
        return Written(output =>
        {
            output.WriteTag(PayloadField.Time, WireFormat.WireType.Varint);
            output.WriteUInt64((ulong)now.ToUnixTimeMilliseconds());
            output.WriteTag(PayloadField.Metrics, WireFormat.WireType.LengthDelimited);
            output.WriteBytes(ByteString.CopyFrom(metric));
        });
    }

    private static SparkplugPayload Read(CodedInputStream input)
    {
        DateTimeOffset? at = null;
        int? seq = null;
        var metrics = new List<SparkplugMetric>();
        while (input.ReadTag() is not 0 and var tag)
        {
            switch (WireFormat.GetTagFieldNumber(tag))
            {
                case PayloadField.Time:
                    at = Moment(input.ReadUInt64());
                    break;
                case PayloadField.Metrics:
                    metrics.Add(Metric(input.ReadBytes().CreateCodedInput()));
                    break;
                case PayloadField.Seq:
                    seq = (int)(input.ReadUInt64() % 256);
                    break;
                default:
                    input.SkipLastField();
                    break;
            }
        }

        return new SparkplugPayload(at, seq, metrics);
    }

    private static SparkplugMetric Metric(CodedInputStream input)
    {
        var metric = new SparkplugMetric("", null, null, 0, false, null);
        var isNull = false;
        while (input.ReadTag() is not 0 and var tag)
        {
            switch (WireFormat.GetTagFieldNumber(tag))
            {
                case PayloadField.MetricName: metric = metric with { Name = SparkplugName.OfMetric(input.ReadString()) }; break;
                case PayloadField.Alias: metric = metric with { Alias = unchecked((long)input.ReadUInt64()) }; break;
                case PayloadField.MetricTime: metric = metric with { At = Moment(input.ReadUInt64()) }; break;
                case PayloadField.DataType: metric = metric with { DataType = (int)input.ReadUInt32() }; break;
                case PayloadField.IsHistorical: metric = metric with { IsHistorical = input.ReadBool() }; break;
                case PayloadField.IsNull: isNull = input.ReadBool(); break;
                case PayloadField.Int: metric = metric with { Raw = (ulong)input.ReadUInt32() }; break;
                case PayloadField.Long: metric = metric with { Raw = input.ReadUInt64() }; break;
                case PayloadField.Float: metric = metric with { Raw = (double)input.ReadFloat() }; break;
                case PayloadField.Double: metric = metric with { Raw = input.ReadDouble() }; break;
                case PayloadField.Boolean: metric = metric with { Raw = input.ReadBool() }; break;
                case PayloadField.String: metric = metric with { Raw = input.ReadString() }; break;
                default: input.SkipLastField(); break;
            }
        }

        return isNull ? metric with { Raw = null } : metric;
    }

    private static DateTimeOffset Moment(ulong milliseconds) =>
        DateTimeOffset.FromUnixTimeMilliseconds((long)Math.Min(milliseconds, long.MaxValue));

    private static byte[] Written(Action<CodedOutputStream> write)
    {
        using var bytes = new MemoryStream();
        using (var output = new CodedOutputStream(bytes, leaveOpen: true)) write(output);
        return bytes.ToArray();
    }
}
