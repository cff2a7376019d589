using WearWatch.Wear;

namespace WearWatch.Tests.Wear;

/// <summary>
/// Oracle: 100 simulated chains whose wear rate trebles at a known hour and 100 whose rate does not change
/// (tests/data/SOURCES.md). The bars are those of an independent implementation on 700 other chains, with room for chance.
/// </summary>
public sealed class RateChangeDetectionTests
{
    private static readonly Lazy<List<Seen>> Fleet = new(Look);

    [Fact]
    public void At_most_five_false_alarms_come_on_a_thousand_readings()
    {
        Seen[] steady = [.. Fleet.Value.Where(s => s.ChangeHours is null)];
        var alarms = steady.Sum(s => s.Alarms.Zip(s.Alarms.Prepend(false), (now, before) => now && !before ? 1 : 0).Sum());

        Assert.InRange(1000.0 * alarms / steady.Sum(s => s.Alarms.Length), 0, 5);
    }

    // Bars: 0.70 and 0.93, among chains with so many readings after the change whose signal is at least three standard
    // deviations.
    [Theory]
    [InlineData(2, 0.70)]
    [InlineData(3, 0.93)]
    public void A_threefold_rise_is_found_within_two_or_three_readings(int readings, double share)
    {
        Seen[] shown = [.. Fleet.Value.Where(s => s.Signal >= 3 && s.AlarmsAfter.Length >= readings)];

        Assert.True(shown.Length >= 50);
        Assert.InRange((double)shown.Count(s => s.AlarmsAfter.Take(readings).Any(a => a)) / shown.Length, share, 1);
    }

    [Fact]
    public void Misread_lengths_are_flagged_as_they_come_and_good_ones_are_not()
    {
        var flags = Fleet.Value.SelectMany(s => s.Flags).ToList();

        Assert.InRange(flags.Where(f => f.Misread).Average(f => f.Flagged ? 1 : 0), 0.85, 1);
        Assert.InRange(flags.Where(f => !f.Misread).Average(f => f.Flagged ? 1 : 0), 0, 0.005);
    }

    private static List<Seen> Look()
    {
        var fleet = RecordedFleet.Load("wear/detect");
        var prior = DutyPrior.Learn(fleet.Cards.Select(c => (c, fleet.Observations(c))));
        var truth = RecordedFleet.Rows("wear/detect", "readings_truth.csv").ToLookup(r => r[0]);
        var changes = RecordedFleet.Rows("wear/detect", "changes.csv").ToDictionary(r => r[0]);
        return fleet.Cards.ConvertAll(card =>
        {
            var judged = Judge(fleet.Histories[card.Name].Current, prior.For(card));
            var told = truth[card.Name].ToList();
            var change = changes.GetValueOrDefault(card.Name);
            double? at = change is null ? null : RecordedFleet.Number(change[3]);
            return new Seen(
                at, change is null ? 0 : Signal(judged, RecordedFleet.Number(change[1])),
                [.. judged.Select(j => j.ProbabilityRateRose > 0.5)],
                [.. judged.Where(j => j.Observation.HoursSinceFitting > at).Select(j => j.ProbabilityRateRose > 0.5)],
                [.. judged.Where(j => RecordedFleet.Number(told[j.Observation.ReadingIndex][2]) < 3)
                    .Select(j => (told[j.Observation.ReadingIndex][3].Length > 0, j.ProbabilityMisread > 0.5))]);
        });
    }

    private static List<JudgedObservation> Judge(FittedChain chain, WearPrior prior)
    {
        var track = WearFilter.Start(chain, prior);
        var judged = new List<JudgedObservation>();
        foreach (var observation in chain.Observations)
        {
            track = WearFilter.Default.Step(chain, track, observation);
            var view = WearNow.Of(track, WearFilter.Default);
            judged.Add(new(observation, view.ProbabilityLastMisread, view.ProbabilityRateRose));
        }

        return judged;
    }

    /// <summary>
    /// Wear that a threefold rate adds in one usual interval, over the scatter of a difference of two readings.
    /// </summary>
    private static double Signal(List<JudgedObservation> judged, double percentPer1000Hours)
    {
        var hours = judged.ConvertAll(j => j.Observation.HoursSinceFitting);
        double[] gaps = [.. hours.Zip(hours.Skip(1), (a, b) => b - a).Order()];
        return gaps.Length == 0
            ? 0
            : 2 * percentPer1000Hours * gaps[gaps.Length / 2] / 1000 / (Math.Sqrt(2) * judged[^1].Observation.ScatterPercent);
    }

    private sealed record Seen(
        double? ChangeHours, double Signal, bool[] Alarms, bool[] AlarmsAfter, (bool Misread, bool Flagged)[] Flags);
}
