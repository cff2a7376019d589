using WearWatch.Chains;
using WearWatch.Plant.Intake;

namespace WearWatch.Worker.Tests.Intake;

/// <summary>
/// Events without a date whose counter cannot be: entered they are sent back, and in files when all readings are known.
/// </summary>
public sealed class UndatedEventTests
{
    private static readonly DateTimeOffset First = TestPlant.Start.AddDays(-200);

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("oiling", 133_000)] // one digit too many
    [InlineData("tensioned", 31_300)] // two swapped
    [InlineData("replacement", 133_000)]
    [InlineData("meter_reset", 1_330)] // one left out, amid a counter that went on
    public async Task An_event_without_a_date_whose_counter_cannot_be_is_sent_back(string kind, double counterH)
    {
        await using var plant = await TestPlant.OpenAsync();
        await FollowedAsync(plant);
        var entered = await plant.Desk.TakeEventAsync(
            A.Event(kind: Kinds[kind], beforeH: counterH, afterH: kind == "meter_reset" ? 0 : counterH), Ct);
        var report = await plant.Import.ImportAsync([A.Events(Undated(kind, counterH), Undated("oiling", 13_300))], ct: Ct);

        Assert.Equal("counter_h_before", Assert.Single(Assert.IsType<IntakeAnswer.Refused>(entered).Refusals).Field);
        Assert.Equal((1, 1), (report.Taken, report.Refused));
        Assert.Equal("counter_h_before", Assert.Single(report.Files[0].Remarks).Column);
    }

    [Fact]
    public async Task A_first_import_weighs_events_without_dates_by_the_readings_that_come_in_with_them()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        // The counter goes to 13,300 h and begins anew; in between are an oiling and a replacement.
        int[] days = [.. Enumerable.Range(0, 22).Select(i => 10 * i)];
        var readings = A.Readings([.. days.Select(
            day => A.Row("C1", day <= 110 ? CounterAt(day) : CounterAt(day) - 13_310, PercentAt(day)))]);
        string[] right = [Undated("oiling", 12_345), Undated("replacement", 13_000), Undated("meter_reset", 13_310)];
        var good = await plant.Import.PreviewAsync([A.Events(right), readings], ct: Ct);
        var spoiled = await plant.Import.PreviewAsync(
            [A.Events([.. right, Undated("oiling", 123_450), Undated("replacement", 31_000)]), readings], ct: Ct);
        var reset = await plant.Import.PreviewAsync([A.Events(Undated("meter_reset", 133_100)), readings], ct: Ct);

        Assert.Equal((days.Length + 3, 0), (good.Taken, good.Refused));
        Assert.Equal([5, 6], spoiled.Files.SelectMany(f => f.Remarks).Select(r => r.Line));
        Assert.Contains("13,310 h", Assert.Single(reset.Files.SelectMany(f => f.Remarks)).Reason.ToString(),
            StringComparison.Ordinal);
    }

    private static Dictionary<string, ChainEventKind> Kinds { get; } = new()
    {
        ["oiling"] = ChainEventKind.Oiling,
        ["tensioned"] = ChainEventKind.Tensioned,
        ["replacement"] = ChainEventKind.Replacement,
        ["meter_reset"] = ChainEventKind.MeterReset,
    };

    private static string Undated(string kind, double counterH) => FormattableString.Invariant(
        $"C1,{kind},,{counterH},{(kind == "replacement" ? counterH : kind == "meter_reset" ? 0 : "")}");

    private static async Task FollowedAsync(TestPlant plant)
    {
        await plant.AddChainAsync();
        for (var i = 0; i <= 10; i++)
        {
            Assert.IsType<IntakeAnswer.Taken>(await plant.Desk.TakeReadingAsync(A.Reading(
                counterH: CounterAt(10 * i), percent: PercentAt(10 * i), takenAt: First.AddDays(10 * i)), Ct));
        }
    }

    // 15 h a day from 11,650 h on; 0.3 % in 1,000 h.
    private static double CounterAt(int day) => 11_650 + 15 * day;

    private static double PercentAt(int day) => 0.4 + 0.3 * 15 * day / 1000;
}
