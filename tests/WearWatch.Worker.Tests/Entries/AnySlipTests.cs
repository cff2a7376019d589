using WearWatch.Benchmarks.Entries;

namespace WearWatch.Worker.Tests.Entries;

/// <summary>Some hundred rows of the mill with a slip in any field; the long form is the benchmark <c>moves</c>.</summary>
public sealed class AnySlipTests : IDisposable
{
    private const int Entries = 12;
    private const int Seed = 11;

    private readonly string folder = Directory.CreateTempSubdirectory("wearwatch-any-slip-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void No_slip_in_any_field_that_nobody_is_asked_about_moves_the_early_date_by_more_than_90_days()
    {
        var fleet = TrialFleet.Mill(folder, dated: true);
        var counts = AnySlip.All.Select(slip => AnySlipTrial.Of(fleet, slip, Entries, Seed)).ToList();

        Assert.True(counts.Sum(c => c.Made) > 300, "Some hundred are made.");
        Assert.All(counts, c => Assert.True(c.Moved == 0, c.ToString()));
    }

    [Fact]
    public void No_slip_in_any_field_of_an_event_that_is_not_sent_back_moves_it_either()
    {
        var fleet = TrialFleet.Mill(folder, dated: true);
        var counts = EventSlip.All.Select(slip => EventSlipTrial.Of(fleet, slip, Entries, Seed)).ToList();

        Assert.True(counts.Sum(c => c.Made) > 100, "Some hundred are made.");
        Assert.True(counts.All(c => c.Moved == 0), string.Join('\n', counts));
    }

    // 1,000 of each by the benchmark lengths: 0.97 and 1.00 of those that lie four standard deviations off.
    [Fact]
    public void A_length_that_is_too_long_is_asked_about_as_readily_as_one_that_is_too_short()
    {
        foreach (var dated in (bool[])[true, false])
        {
            var fleet = TrialFleet.Mill(folder, dated);
            var longer = LengthTrial.Typed.Of(fleet, LengthSlip.All.Single(s => s.Name == LengthSlip.MoreWorn), 40, Seed);
            var shorter = LengthTrial.Typed.Of(fleet, LengthSlip.All.Single(s => s.Name == LengthSlip.LessWorn), 40, Seed);
            Assert.True(longer.HeldShare >= 0.9 && shorter.HeldShare >= 0.9, $"{longer}\n{shorter}");
        }
    }

    [Fact]
    public void The_slips_of_a_length_are_asked_about_and_named()
    {
        var fleet = TrialFleet.Mill(folder, dated: true);
        var counts = LengthSlip.All.Select(slip => LengthTrial.Typed.Of(fleet, slip, Entries, Seed)).ToList();
        var named = counts.Where(c => c.Slip is LengthSlip.Swapped or LengthSlip.Missing or LengthSlip.Neighbour).ToList();

        Assert.True(named.Sum(c => c.First) >= 0.7 * named.Sum(c => c.HeldOfAll), string.Join('\n', named));
        Assert.True(counts.Sum(c => c.Wrong) <= 0.03 * counts.Sum(c => c.HeldOfAll), string.Join('\n', counts));
    }
}
