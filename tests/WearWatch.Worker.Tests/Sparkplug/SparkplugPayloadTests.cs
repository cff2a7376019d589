using System.Text.Json;
using WearWatch.Plant.Sparkplug;

namespace WearWatch.Worker.Tests.Sparkplug;

/// <summary>Payloads that an independent library made (tests/data/SOURCES.md) are read as it wrote them.</summary>
public sealed class SparkplugPayloadTests
{
    private static readonly Dictionary<string, string> Payloads = JsonSerializer.Deserialize<Dictionary<string, string>>(
        File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "data", "sparkplug", "payloads.json")))!;

    private static readonly DateTimeOffset At = DateTimeOffset.FromUnixTimeMilliseconds(1_480_000_000_000);

    [Fact]
    public void A_birth_has_its_session_its_names_their_aliases_and_their_values()
    {
        var birth = Read("birth");
        Assert.Equal((At, 0, 7L), (birth.At, birth.Seq, birth.BdSeq));
        Assert.Equal(
            [
                ("bdSeq", null, "7"), ("Node Control/Rebirth", null, "false"), ("Drive/Hours", 11, "18211.4"),
                ("Drive/Runs", 12, "true"), ("Drive/Pulses", 13, "4294967295"), ("Chain/Temperature", 14, "36.5"),
            ],
            birth.Metrics.Select(m => (m.Name, (int?)m.Alias, m.Value(m.DataType)?.GetRawText())));
        Assert.Equal([1, 2, 3, 4], birth.Metrics.Skip(2).Select(m => (m.At!.Value - At).TotalMilliseconds));
    }

    [Fact]
    public void Data_of_every_type_keep_sign_size_and_time_and_what_is_no_figure_is_none()
    {
        var data = Read("data");
        Assert.Equal(255, data.Seq);
        Assert.Equal(
            [
                ("i8", "-8"), ("i16", "-1600"), ("i32", "-2"), ("i64", "-5000000000"), ("u8", "200"), ("u16", "65535"),
                ("u64", "9007199254740991"), ("text", "Kälte ✓"), ("when", "0"), ("none", null), ("kept", "1.25"), ("set", null),
                ("rich", "2.5"),
            ],
            data.Metrics.Select(m => (m.Name, m.Value(m.DataType)?.ToString())));
        Assert.Equal(["kept"], data.Metrics.Where(m => m.IsHistorical).Select(m => m.Name));
    }

    [Fact]
    public void A_death_has_its_session_and_no_number() => Assert.Equal((7L, null), (Read("death").BdSeq, Read("death").Seq));

    [Fact]
    public void The_command_that_asks_for_births_is_a_payload_of_one_true_metric()
    {
        var command = SparkplugPayload.Read(SparkplugPayload.AskForBirth(At))!;
        Assert.Equal(At, command.At);
        Assert.Equal(
            ("Node Control/Rebirth", 11, true),
            (command.Metrics.Single().Name, command.Metrics[0].DataType, command.Metrics[0].Raw));
    }

    [Theory]
    [InlineData("")]
    [InlineData("7b7d")]
    [InlineData("12ff")]
    [InlineData("0a")]
    public void What_is_no_payload_is_refused_or_empty_and_never_an_error(string hex) =>
        Assert.Empty(SparkplugPayload.Read(Convert.FromHexString(hex))?.Metrics ?? []);

    private static SparkplugPayload Read(string name) => SparkplugPayload.Read(Convert.FromBase64String(Payloads[name]))!;
}
