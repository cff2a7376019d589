using Google.Protobuf;
using WearWatch.Plant.Telemetry;

namespace WearWatch.Worker.Tests.Sparkplug;

/// <summary>Messages of an edge node <c>Mill/N1</c>, as the specification lays them out.</summary>
internal static class SparkplugMessage
{
    /// <summary>A birth of the node with its hour counter under alias 1 and its device's under alias 2.</summary>
    public static Arrival NodeBirth(long bdSeq, double hours, DateTimeOffset at, int seq = 0, int alias = 1) =>
        Of("NBIRTH/N1", at, seq, ("bdSeq", null, bdSeq), ("Drive/Hours", alias, hours));

    public static Arrival NodeDeath(long bdSeq, DateTimeOffset at) => Of("NDEATH/N1", at, null, ("bdSeq", null, bdSeq));

    public static Arrival DeviceBirth(double hours, DateTimeOffset at, int seq) =>
        Of("DBIRTH/N1/PLC", at, seq, ("Drive/Hours", 2, hours));

    public static Arrival NodeData(double hours, DateTimeOffset at, int seq, int alias = 1) =>
        Of("NDATA/N1", at, seq, ("", alias, hours));

    public static Arrival DeviceData(double hours, DateTimeOffset at, int seq) => Of("DDATA/N1/PLC", at, seq, ("", 2, hours));

    public static Arrival Of(
        string typeAndNode, DateTimeOffset at, int? seq, params (string Name, int? Alias, object Value)[] metrics) =>
        new($"spBv1.0/Mill/{typeAndNode}", Written(output =>
        {
            Number(output, 1, (ulong)at.ToUnixTimeMilliseconds());
            foreach (var metric in metrics)
            {
                output.WriteTag(2, WireFormat.WireType.LengthDelimited);
                output.WriteBytes(ByteString.CopyFrom(Written(m => Metric(m, metric, at))));
            }

            if (seq is { } number) Number(output, 3, (ulong)number);
        }));

    private static void Metric(CodedOutputStream output, (string Name, int? Alias, object Value) metric, DateTimeOffset at)
    {
        if (metric.Name.Length > 0)
        {
            output.WriteTag(1, WireFormat.WireType.LengthDelimited);
            output.WriteString(metric.Name);
        }

        if (metric.Alias is { } alias) Number(output, 2, (ulong)alias);
        Number(output, 3, (ulong)at.ToUnixTimeMilliseconds());
        if (metric.Value is double figure)
        {
            Number(output, 4, 10);
            output.WriteTag(13, WireFormat.WireType.Fixed64);
            output.WriteDouble(figure);
        }
        else
        {
            Number(output, 4, 8);
            Number(output, 11, (ulong)(long)metric.Value);
        }
    }

    private static void Number(CodedOutputStream output, int field, ulong value)
    {
        output.WriteTag(field, WireFormat.WireType.Varint);
        output.WriteUInt64(value);
    }

    private static byte[] Written(Action<CodedOutputStream> write)
    {
        using var bytes = new MemoryStream();
        using (var output = new CodedOutputStream(bytes, leaveOpen: true)) write(output);
        return bytes.ToArray();
    }
}
