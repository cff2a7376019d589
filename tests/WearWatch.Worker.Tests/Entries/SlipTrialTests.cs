using WearWatch.Benchmarks.Entries;

namespace WearWatch.Worker.Tests.Entries;

/// <summary>Sixty entries of the mill with each slip of a counter; the long form is the benchmark <c>slips</c>.</summary>
public sealed class SlipTrialTests : IDisposable
{
    private const int Entries = 60;
    private const int Seed = 5;

    private readonly string folder = Directory.CreateTempSubdirectory("wearwatch-slips-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    // A date that is off by a day moves nothing, and nothing can tell it.
    [Fact]
    public void With_dates_a_slip_of_the_counter_that_matters_is_asked_about_and_what_was_meant_stands_first()
    {
        var fleet = TrialFleet.Mill(folder, dated: true);
        var counts = TrialSlip.OfCounters.Where(s => s.Name != "day").Select(s => SlipTrial.Of(fleet, s, Entries, Seed)).ToList();

        Assert.True(counts.Sum(c => c.Held) >= 0.98 * counts.Sum(c => c.Matter), string.Join('\n', counts));
        Assert.True(counts.Sum(c => c.Named) >= 0.95 * counts.Sum(c => c.Held), string.Join('\n', counts));
        Assert.All(counts, c => Assert.True(c.HeldShare >= 0.9 && c.NamedShare >= 0.9, c.ToString()));
    }

    [Fact]
    public void No_slip_of_counter_or_date_that_nobody_is_asked_about_moves_the_early_date_by_more_than_90_days()
    {
        var fleet = TrialFleet.Mill(folder, dated: true);
        foreach (var slip in TrialSlip.OfCounters)
        {
            var days = SlipTrial.MostDaysMoved(fleet, slip, Entries, Seed);
            Assert.True(days <= 90, $"{slip.Name}: {days:0} days");
        }
    }

    [Fact]
    public void Without_dates_nine_in_ten_that_matter_are_asked_about()
    {
        var fleet = TrialFleet.Mill(folder, dated: false);
        var counts = TrialSlip.OfCounters.Select(s => SlipTrial.Of(fleet, s, Entries, Seed)).Where(c => c.Made > 0).ToList();

        Assert.True(counts.Sum(c => c.Held) >= 0.9 * counts.Sum(c => c.Matter), string.Join('\n', counts));
    }

    [Fact]
    public void Ordinary_counters_are_let_pass()
    {
        foreach (var dated in (bool[])[true, false])
        {
            var (asked, of) = SlipTrial.Honest(TrialFleet.Mill(folder, dated), 400, Seed);
            Assert.Equal(400, of);
            Assert.True(asked <= 2, $"{asked} of {of} asked about");
        }
    }
}
