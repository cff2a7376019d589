using WearWatch.Chains;
using WearWatch.Learning;
using WearWatch.Planning.Measuring;
using WearWatch.Planning.Swaps;
using WearWatch.Rounds;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Benchmarks.Years;

/// <summary>
/// Does what WearWatch says: measures when its rounds ask, swaps by its plan, and learns prior, constants and curve once a year
/// from all chains that ever ran, most of them swapped early by its own advice.
/// </summary>
/// <param name="wherePays">Whether it measures only where a reading is worth its price, or a quarter has passed.</param>
internal sealed class FollowsWearWatch(bool wherePays = false) : PlannedWay
{
    private const int Seed = 17;

    private static readonly ChainCard card =
        new() { Name = "C", Line = "L", PitchMm = 50.8, FittedCounter = RunningHours.Zero };

    private readonly Dictionary<int, (FittedChain Chain, WearTrack Track)> tracks = [];
    private WearPrior prior = WearPrior.Broad;
    private WearFilter filter = WearFilter.Default;

    public override string Name => wherePays ? "WearWatch, readings where they pay" : "WearWatch";

    public override bool Measures(Position position, DateTimeOffset now)
    {
        var forecast = position.Observations.Count > 0 ? Forecast(position) : null;
        return MeasuringDue.For(
            position.MeasuredAt, forecast?.EarlyHours, forecast?.MiddleHours, false, Mill.Calendar, now).DueAt <= now
            && (!wherePays || position.MeasuredAt is not { } last || now >= last + MeasuringDue.Most || Pays(position, now));
    }

    private bool Pays(Position position, DateTimeOffset now)
    {
        var windows = Mill.Windows(now, Mill.HorizonWeeks);
        var end = windows.Max(w => w.Start).AddDays(1) + Mill.Costs.NextChance;
        var (chain, track) = tracks[position.Index];
        var outcomes = ReadingToCome.Outcomes(
            filter, chain, track, position.Hours, Position.ScatterPercent, TrueLife.LimitPercent);
        return TaskOf(position) is { } task && ReadingValue.Of(
            task, outcomes.Select(o => (o.Weight, new HoursToLimit(o.Forecast, 0))),
            [.. windows.Where(w => w.Line == position.Line).Select(w => Mill.Calendar.Between(now, w.Start).Hours)],
            Mill.Calendar.Between(now, end).Hours, Mill.Costs) >= Mill.ReadingPrice;
    }

    public override void Learn(IReadOnlyList<FittedChain> chains)
    {
        var telling = chains.Where(c => c.Observations.Count > 0).ToList();
        prior = FleetTraining.Train([.. telling.Select(c => new FleetChain(card, c.Observations))], Seed)
            is FleetTrainingOutcome.Trained trained ? trained.Model.PriorFor(card) : WearPrior.Broad;
        filter = new WearFilter(SelfCalibration.Of(
            [.. telling.Where(c => c.Observations.Count >= TellingChain.FewestReadings).Select(c => new TellingChain(prior, c))],
            WearConstants.Default).Else(WearConstants.Default));
        tracks.Clear();
    }

    public override WearForecast Forecast(Position position)
    {
        var known = position.Observations;
        var kept = tracks.GetValueOrDefault(position.Index);
        if (kept.Track is null || kept.Chain.Observations.Count != known.Count
            || (known.Count > 0 && kept.Chain.Observations[^1] != known[^1]))
        {
            var chain = position.Known(removed: false);
            tracks[position.Index] = kept = (chain, filter.Follow(chain, prior));
        }

        return filter.Forecast(kept.Chain, kept.Track, TrueLife.LimitPercent);
    }
}
