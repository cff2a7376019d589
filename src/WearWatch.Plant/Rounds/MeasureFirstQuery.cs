using WearWatch.Planning.Measuring;
using WearWatch.Planning.Swaps;
using WearWatch.Plant.Planning;
using WearWatch.Plant.Tracking;
using WearWatch.Wear;

namespace WearWatch.Plant.Rounds;

/// <summary>
/// Where a reading pays: chains never measured, swaps planned on thin evidence, then by the worth of one more reading.
/// </summary>
/// <remarks>Only chains whose swap is decided within the planner's horizon are asked: no reading changes another's.</remarks>
public sealed class MeasureFirstQuery(PlanQuery plans, ChainReview review)
{
    /// <summary>So many are named: what a round can take along.</summary>
    public const int Most = 10;

    /// <summary>A swap that rests on fewer readings stands on thin evidence. Common practice.</summary>
    private const int FewestReadings = 3;

    /// <summary>So many chains are weighed, those likeliest to reach their limit first.</summary>
    private const int MostWeighed = 25;

    private const double UsualScatterPercent = 0.05;

    /// <summary>The chains to measure first, and the money in which their worth is told.</summary>
    public async Task<(IReadOnlyList<MeasureFirst> Chains, string Money)> AskAsync(CancellationToken ct)
    {
        var picture = await plans.AskAsync(ct);
        var (input, later) = (picture.Input, LaterHours(picture));
        var tasks = input.Tasks.OrderByDescending(t => t.MeasureFirst).ThenByDescending(t => t.Left.ProbabilityPast(later))
            .Take(MostWeighed).ToDictionary(t => picture.Faces[t.Chain].Row.Id);
        var chains = (await review.AssessAsync([.. tasks.Keys], ct)).AsParallel().WithCancellation(ct)
            .Select(chain => Weigh(chain, tasks[chain.Raw.Id], picture, later)).OfType<Weighed>().ToList();
        return ([.. chains.OrderBy(c => c.Rank).ThenByDescending(c => c.First.Worth ?? 0)
            .ThenBy(c => c.First.Chain.Name, StringComparer.Ordinal).Take(Most).Select(c => c.First)], input.Costs.Money);
    }

    private static Weighed? Weigh(ReviewedChain chain, SwapTask task, PlanPicture picture, double laterHours)
    {
        var row = picture.Faces[task.Chain].Row;
        if (task.MeasureFirst) return new(0, new(row, null, $"never measured: its date rests on no reading of its own"));
        var readings = chain.Assessment.Observations.Count;
        if (readings == 0) return null; // judged by its links
        if (chain.First is { IsByLength: false }) return null; // another measure dates it, whatever a length reads
        var worth = WorthOf(chain.Assessment, task, picture, laterHours);
        if (picture.Swaps.ContainsKey(task.Chain) && readings < FewestReadings)
            return new(1, new(row, worth, $"its planned swap rests on {readings} readings"));
        return worth > 0 ? new(2, new(row, worth, $"its swap may come at another time once it is measured")) : null;
    }

    private static double WorthOf(Assessment chain, SwapTask task, PlanPicture picture, double laterHours)
    {
        var (filter, current) = (new WearFilter(chain.Constants), chain.History.Current);
        var outcomes = ReadingToCome.Outcomes(
            filter, current, chain.Track, chain.HoursNow,
            current.Observations is [.., var last] ? last.ScatterPercent : UsualScatterPercent, chain.Limit.Percent);
        var left = filter.Forecast(current, chain.Track, chain.Limit.Percent);
        return ReadingValue.Of(
            task with { Left = new HoursToLimit(left, chain.HoursNow - chain.HoursAtLastReading) },
            outcomes.Select(o => (o.Weight, new HoursToLimit(o.Forecast, 0))),
            [.. picture.Input.Windows.Where(w => w.Line == task.Line && w.Start > picture.Input.Now)
                .Select(w => picture.Input.Calendar.Between(picture.Input.Now, w.Start).Hours)],
            laterHours, picture.Input.Costs);
    }

    private static double LaterHours(PlanPicture picture) => picture.Input.Calendar.Between(
        picture.Input.Now, picture.Input.HorizonEnd + picture.Input.Costs.NextChance).Hours;

    private sealed record Weighed(int Rank, MeasureFirst First);
}
