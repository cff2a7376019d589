using System.Text;
using WearWatch.Plant.Mappings;
using WearWatch.Plant.Telemetry;
using WearWatch.Signals;
using WearWatch.Storage.Rows;

namespace WearWatch.Worker.Tests.Mappings;

/// <summary>What a mapping makes of a message: value, time, unit and chain, or why not.</summary>
public sealed class SignalMappingTests
{
    private const string Topic = "site/A/press/C1/hours";
    private static readonly DateTimeOffset Arrived = new(2026, 6, 1, 10, 0, 0, TimeSpan.Zero);

    [Fact]
    public void Value_scale_time_and_chain_come_from_where_the_mapping_says()
    {
        var message = Understood(Mapped.Row(), """{"run":{"tenths":182114},"t":1780300800.5}""");
        Assert.Equal(("C1", TelemetryKind.RunningCounter), (message.Chain, message.Kind));
        Assert.Equal(18211.4, message.Value, 9);
        Assert.Equal(DateTimeOffset.UnixEpoch.AddSeconds(1780300800.5), message.At);
    }

    [Theory]
    [InlineData(TimeNotation.Arrival, "0", "2026-06-01T10:00:00Z")]
    [InlineData(TimeNotation.Iso8601, "\"2026-06-01T09:30:00+02:00\"", "2026-06-01T07:30:00Z")]
    [InlineData(TimeNotation.UnixSeconds, "\"1780300800\"", "2026-06-01T08:00:00Z")]
    [InlineData(TimeNotation.UnixMilliseconds, "1780300800125", "2026-06-01T08:00:00.125Z")]
    public void Each_form_of_time_is_read(TimeNotation form, string told, string at) => Assert.Equal(
        DateTimeOffset.Parse(at, null), Understood(Mapped.Row(form: form), $$"""{"run":{"tenths":10},"t":{{told}}}""").At);

    [Theory]
    [InlineData(TelemetryKind.RunningSwitch, "true", 1)]
    [InlineData(TelemetryKind.RunningSwitch, "\"OFF\"", 0)]
    [InlineData(TelemetryKind.RunningSwitch, "3", 1)]
    [InlineData(TelemetryKind.RunningPulses, "4294967295", 4294967295)]
    [InlineData(TelemetryKind.Temperature, "\"36.5\"", 36.5)]
    public void Each_kind_is_read(TelemetryKind kind, string told, double value)
    {
        var message = Understood(Mapped.Row(kind: kind), $$"""{"run":{"tenths":{{told}}},"t":1780300800}""");
        Assert.Equal((kind, value), (message.Kind, message.Value));
    }

    [Theory]
    [InlineData(TelemetryKind.RunningCounter, "min", 1200, 2)] // 1,200 tenths of a minute
    [InlineData(TelemetryKind.RunningCounter, "s", 72000, 2)]
    [InlineData(TelemetryKind.RunningCounter, "d", 10, 24)]
    [InlineData(TelemetryKind.Temperature, "[degF]", 212, 100)]
    [InlineData(TelemetryKind.Temperature, "K", 273.15, 0)]
    public void A_unit_that_the_message_tells_is_converted(TelemetryKind kind, string unit, double told, double value)
    {
        var row = WithUnit(Mapped.Row(kind: kind));
        Assert.Equal(value, Understood(row, FormattableString.Invariant(
            $$"""{"run":{"tenths":{{told}}},"t":1780300800,"u":"{{unit}}"}""")).Value, 9);
    }

    [Theory]
    [InlineData("""{"run":{},"t":1780300800}""", "Nothing stands at $.run.tenths.")]
    [InlineData("""{"run":{"tenths":"many"},"t":1780300800}""", "is \"many\", which is no figure")]
    [InlineData("""{"run":{"tenths":1},"t":"soon"}""", "The time at $.t is \"soon\"")]
    [InlineData("""{"run":{"tenths":-10},"t":1780300800}""", "'counter_h' has to be a number from 0")]
    [InlineData("""{"run":""", "Not JSON: line 1")]
    public void What_it_cannot_read_has_its_reason(string payload, string reason) => Assert.Contains(
        reason, Not(Mapped.Row(), payload), StringComparison.Ordinal);

    [Fact]
    public void A_path_of_several_values_and_an_unknown_unit_are_no_figure()
    {
        Assert.Contains("2 values stand at", Not(Mapped.Row(value: "$.run.*"),
            """{"run":{"a":1,"b":2},"t":1}"""), StringComparison.Ordinal);
        Assert.Contains("The unit 'furlong' is not known", Not(WithUnit(Mapped.Row()),
            """{"run":{"tenths":1},"t":1,"u":"furlong"}"""), StringComparison.Ordinal);
    }

    [Fact]
    public void A_table_leads_foreign_words_to_chains_and_says_which_word_it_lacks()
    {
        var row = new SignalMappingRow
        {
            Name = "By words",
            Topic = "site/{line}/press/{machine}/hours",
            ValuePath = "$.h",
            Chain = "{line}-{machine}",
            Words = [new ChainWord("A-C1", "Kiln drive")],
            SavedBy = "",
        };
        Assert.Equal("Kiln drive", Understood(row, """{"h":5}""").Chain);
        Assert.Contains("lacks the word 'B-C1'", Not(row, """{"h":5}""", "site/B/press/C1/hours"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("wearwatch/v1/plant/C1/running", "$.x", "C1", "Topic")]
    [InlineData("spBv1.0/Mill/NDATA/N1", "$.x", "C1", "Topic")]
    [InlineData("site/x", "x", "C1", "ValuePath")]
    [InlineData("site/x", "$.x", "{machine}", "Chain")]
    [InlineData("site/{m}", "$.x", "", "Chain")]
    public void A_mapping_that_cannot_read_is_refused_at_its_field(string topic, string value, string chain, string field)
    {
        Assert.Null(SignalMapping.Of(Mapped.Row(topic, value, chain), out var faults));
        Assert.Equal([field], faults.Keys);
    }

    private static SignalMappingRow WithUnit(SignalMappingRow row) => new()
    {
        Name = row.Name,
        Topic = row.Topic,
        ValuePath = row.ValuePath,
        TimeForm = row.TimeForm,
        TimePath = row.TimePath,
        UnitPath = "$.u",
        Kind = row.Kind,
        Scale = row.Scale,
        Chain = row.Chain,
        SavedBy = "",
    };

    private static TelemetryMessage Understood(SignalMappingRow row, string payload)
    {
        var text = Mapped.Of(row).Read(new Arrival(Topic, Encoding.UTF8.GetBytes(payload)), Arrived);
        return (text as TelemetryText.Understood)?.Message
            ?? throw new InvalidOperationException(((TelemetryText.NotUnderstood)text).Reason.ToString());
    }

    private static string Not(SignalMappingRow row, string payload, string topic = Topic) =>
        ((TelemetryText.NotUnderstood)Mapped.Of(row).Read(new Arrival(topic, Encoding.UTF8.GetBytes(payload)), Arrived))
            .Reason.ToString();
}
