using WearWatch.Entries;
using WearWatch.Gauging;
using WearWatch.Plant.Intake;
using WearWatch.Running;

namespace WearWatch.Worker.Tests.Intake;

public sealed class EntryQuestionTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_reading_as_expected_is_not_doubted()
    {
        await using var plant = await TestPlant.OpenAsync();
        var (slow, _) = await TwoChainsOnALineAsync(plant);
        Assert.False((await plant.Get<EntryQuestion>().AskAsync(slow, Entry(percent: 0.76), ct: Ct))!.IsDoubted);
    }

    [Fact]
    public async Task A_reading_that_the_neighbour_would_show_names_the_neighbour()
    {
        await using var plant = await TestPlant.OpenAsync();
        var (slow, _) = await TwoChainsOnALineAsync(plant);
        var doubt = await plant.Get<EntryQuestion>().AskAsync(slow, Entry(percent: 2.4), ct: Ct);
        Assert.True(doubt!.IsDoubted);
        Assert.Contains(doubt.Slips, slip => slip.Kind == SlipKind.OtherChain
            && slip.Words.ToString().Contains("C2", StringComparison.Ordinal));
    }

    [Fact]
    public async Task What_was_read_after_a_reading_that_is_corrected_does_not_count()
    {
        await using var plant = await TestPlant.OpenAsync();
        var (slow, firstReading) = await TwoChainsOnALineAsync(plant);
        var early = Entry(percent: 0.3) with { Counter = new RunningHours(500), TakenAt = TestPlant.Start.AddDays(-150) };
        var doubt = await plant.Get<EntryQuestion>().AskAsync(slow, early, firstReading, Ct);
        Assert.False(doubt!.IsDoubted);
    }

    private static Reading Entry(double percent) => new()
    {
        Chain = "C1",
        TakenAt = TestPlant.Start,
        Counter = new RunningHours(2900),
        Tool = Tool.Tape,
        Pitches = 40,
        LengthMm = 40 * 25.4 * (1 + percent / 100),
    };

    /// <summary>One chain at 0.70 % after 2,500 h, the other at 2.1 %.</summary>
    private static async Task<(int Slow, long FirstReading)> TwoChainsOnALineAsync(TestPlant plant)
    {
        var slow = await plant.AddChainAsync("C1", "line=Drying");
        await plant.AddChainAsync("C2", "line=Drying");
        long? first = null;
        for (var i = 1; i <= 5; i++)
        {
            var at = TestPlant.Start.AddDays(30 * (i - 6));
            var told = await plant.Desk
                .TakeReadingAsync(A.Reading("C1", 500 * i, 0.2 + 0.1 * i, takenAt: at, confirmed: true), Ct);
            first ??= Assert.IsType<IntakeAnswer.Taken>(told).Id;
            await plant.Desk.TakeReadingAsync(A.Reading("C2", 500 * i, 0.2 + 0.38 * i, takenAt: at, confirmed: true), Ct);
        }

        return (slow, first!.Value);
    }
}
