using WearWatch.Plant.Telemetry;
using WearWatch.Signals;

namespace WearWatch.Worker.Tests.Telemetry;

public sealed class TelemetryTextTests
{
    private const string Good = "\"id\":\"a\",\"at\":\"2026-06-01T12:00:00.5+02:00\"";

    [Theory]
    [InlineData("running", "\"counter_h\":1234.5", TelemetryKind.RunningCounter, 1234.5)]
    [InlineData("running", "\"on\":true", TelemetryKind.RunningSwitch, 1)]
    [InlineData("running", "\"on\":false", TelemetryKind.RunningSwitch, 0)]
    [InlineData("running", "\"pulses\":4294967296", TelemetryKind.RunningPulses, 4294967296.0)]
    [InlineData("length", "\"pitches\":40,\"length_mm\":1020.5,\"temperature_c\":31", TelemetryKind.Length, 1020.5)]
    [InlineData("passes", "\"first_us\":[0,25000,50000],\"second_us\":[100,25100,50100]", TelemetryKind.Passes, 3)]
    [InlineData("temperature", "\"temperature_c\":-12.5", TelemetryKind.Temperature, -12.5)]
    [InlineData("oiling", "\"amount_cm3\":0", TelemetryKind.Oiling, 0)]
    public void A_message_is_read_with_its_figure_and_its_time_in_utc(
        string word, string fields, TelemetryKind kind, double value)
    {
        var read = Assert.IsType<TelemetryText.Understood>(
            TelemetryText.Read(Sent.Raw($"wearwatch/v1/mill/DB-07/{word}", $"{{{Good},{fields}}}")));
        Assert.Equal(("a", "DB-07", kind, value), (read.Message.Id, read.Message.Chain, read.Message.Kind, read.Message.Value));
        Assert.Equal(new DateTimeOffset(2026, 6, 1, 10, 0, 0, 500, TimeSpan.Zero), read.Message.At);
        Assert.Equal(TimeSpan.Zero, read.Message.At.Offset);
        Assert.Equal(kind is TelemetryKind.Length or TelemetryKind.Passes, read.Message.Payload is not null);
    }

    [Fact]
    public void A_name_that_a_topic_cannot_hold_goes_through_it_unchanged()
    {
        var topic = new TelemetryTopic("mill", "Line 1/+5 # 100%", "running");
        Assert.Equal("wearwatch/v1/mill/Line 1%2F%2B5 %23 100%25/running", topic.ToString());
        Assert.Equal(topic, TelemetryTopic.Read(topic.ToString()));
    }

    [Theory]
    [InlineData("wearwatch/v2/mill/C1/running")]
    [InlineData("wearwatch/v1/mill/C1/speed")]
    [InlineData("wearwatch/v1/mill/C1")]
    [InlineData("wearwatch/v1/mill//running")]
    [InlineData("other")]
    public void A_topic_that_is_none_of_ours_is_not_understood(string topic) =>
        Assert.Contains("topic", WhyNot(topic, "{}"), StringComparison.Ordinal);

    [Theory]
    [InlineData("running", "", "not JSON")]
    [InlineData("running", "[]", "one JSON object")]
    [InlineData("running", "{\"at\":\"2026-06-01T12:00:00Z\",\"on\":true}", "'id' is missing")]
    [InlineData("running", "{\"id\":\" \",\"at\":\"2026-06-01T12:00:00Z\",\"on\":true}", "'id' has to be a text of 1 to 100")]
    [InlineData("running", "{\"id\":\"a\",\"on\":true}", "'at' is missing")]
    [InlineData("running", "{\"id\":\"a\",\"at\":\"2026-06-01T12:00:00\",\"on\":true}", "with its offset")]
    [InlineData("running", "{\"id\":\"a\",\"at\":\"2026-06-31T12:00:00Z\",\"on\":true}", "with its offset")]
    [InlineData("running", "{\"id\":\"a\",\"id\":\"b\",\"at\":\"2026-06-01T12:00:00Z\",\"on\":true}", "'id' stands in it twice")]
    [InlineData("running", "{\"id\":\"a\",\"at\":\"2026-06-01T12:00:00Z\"}", "'counter_h' is missing")]
    [InlineData(
        "running", "{\"id\":\"a\",\"at\":\"2026-06-01T12:00:00Z\",\"counter_h\":-1}", "a number from 0 to 10,000,000, not -1")]
    [InlineData("running", "{\"id\":\"a\",\"at\":\"2026-06-01T12:00:00Z\",\"counter_h\":\"12\"}", "a number from 0")]
    [InlineData("running", "{\"id\":\"a\",\"at\":\"2026-06-01T12:00:00Z\",\"counter_h\":1e999}", "a number from 0")]
    [InlineData("running", "{\"id\":\"a\",\"at\":\"2026-06-01T12:00:00Z\",\"on\":1}", "true or false")]
    [InlineData(
        "running", "{\"id\":\"a\",\"at\":\"2026-06-01T12:00:00Z\",\"on\":true,\"pulses\":3}", "'pulses' is not known here")]
    [InlineData("running", "{\"id\":\"a\",\"at\":\"2026-06-01T12:00:00Z\",\"pulses\":3.5}", "a whole number")]
    [InlineData(
        "temperature", "{\"id\":\"a\",\"at\":\"2026-06-01T12:00:00Z\",\"temperature_C\":30}", "'temperature_c' is missing")]
    [InlineData("oiling", "{\"id\":\"a\",\"at\":\"2026-06-01T12:00:00Z\",\"amount_cm3\":null}", "'amount_cm3' is missing")]
    [InlineData("length", "{\"id\":\"a\",\"at\":\"2026-06-01T12:00:00Z\",\"length_mm\":1020}", "'pitches' is missing")]
    [InlineData("passes", "{\"id\":\"a\",\"at\":\"2026-06-01T12:00:00Z\",\"first_us\":[0,2,1],\"second_us\":[1,2,3]}",
        "rising whole numbers")]
    [InlineData("passes", "{\"id\":\"a\",\"at\":\"2026-06-01T12:00:00Z\",\"first_us\":[0,1,2],\"second_us\":[1,2]}",
        "'second_us' has to be 3 to 10,000")]
    public void What_is_wrong_is_said_with_the_field_and_what_is_wanted(string word, string payload, string expected) =>
        Assert.Contains(expected, WhyNot($"wearwatch/v1/mill/C1/{word}", payload), StringComparison.OrdinalIgnoreCase);

    [Fact]
    public void A_payload_that_is_too_long_is_not_read() => Assert.Contains(
        "256 KiB", WhyNot("wearwatch/v1/mill/C1/passes", new string(' ', TelemetryText.LongestBytes + 1)),
        StringComparison.Ordinal);

    private static string WhyNot(string topic, string payload) =>
        Assert.IsType<TelemetryText.NotUnderstood>(TelemetryText.Read(Sent.Raw(topic, payload))).Reason.ToString();
}
