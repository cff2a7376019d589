using System.Globalization;
using WearWatch.SensorSim.Plant;
using WearWatch.SensorSim.Randomness;
using WearWatch.SensorSim.Wear;

namespace WearWatch.SensorSim.Histories;

/// <summary>The chains of one position, one after the other, as far into the future as anybody asks.</summary>
/// <remarks>
/// Built outward from the end of the history: the chain that runs then gets the age that its outlook wants; those before it
/// are lined up backward to the beginning of the records, those after it forward.
/// </remarks>
internal sealed class ChainLives
{
    private const string BadLotName = "K-2417";
    private const double BadLotFactor = 1.8;

    private readonly int seed;
    private readonly MillPosition position;
    private readonly HistorySpan span;
    private readonly List<SimulatedChain> chains = [];
    private int drawnAfter;

    /// <summary>Lines up the chains of a position.</summary>
    public ChainLives(int seed, MillPosition position, PositionFate fate, HistorySpan span)
    {
        (this.seed, this.position, this.span) = (seed, position, span);
        chains.Add(CurrentChain(fate));
        for (var before = -1; chains[0].FittedAtHour > span.StartHour; before--)
        {
            var (path, share) = Draw(before);
            var fitted = Math.Max(0, chains[0].FittedAtHour - path.HoursAt(share * position.LimitPercent));
            chains.Insert(0, Fitted(path, fitted, chains[0].FittedAtHour));
        }
    }

    /// <summary>The chains that were fitted up to the line's running hours, oldest first.</summary>
    public IEnumerable<SimulatedChain> FittedUntil(double hour)
    {
        while (chains[^1].RemovedAtHour <= hour)
        {
            var (path, share) = Draw(++drawnAfter);
            var fitted = chains[^1].RemovedAtHour;
            chains.Add(Fitted(path, fitted, fitted + path.HoursAt(share * position.LimitPercent)));
        }

        return chains.Where(c => c.FittedAtHour <= hour);
    }

    /// <summary>The chain that runs at the line's running hours.</summary>
    public SimulatedChain RunningAt(double hour) => FittedUntil(hour).Last();

    private SimulatedChain CurrentChain(PositionFate fate)
    {
        var chance = ChanceOf(0, "age");
        var path = PathOfCurrent(fate.Outlook, chance, out var change);
        var age = AgeOfCurrent(fate, path, change, chance);
        var fitted = span.EndHour - Math.Min(age, span.EndHour);
        // Even a chain past its limit waits for a stop that is long enough, but then it goes.
        var nextLongStop = span.EndHour + chance.Between(0.5, 5) * span.HoursPerWeek;
        var planned = fitted + path.HoursAt(chance.Between(0.95, 1.08) * position.LimitPercent);
        var removed = fate.Outlook == Outlook.SwapNow ? nextLongStop : Math.Max(planned, nextLongStop);
        return fate.Outlook == Outlook.BadLot
            ? new SimulatedChain(path, BadLotName, position.LimitPercent, fitted, removed)
            : Fitted(path, fitted, removed);
    }

    private WearPath PathOfCurrent(Outlook outlook, Chance chance, out RateStep? change)
    {
        change = null;
        if (outlook == Outlook.BadLot) return PathOf(0, BadLotFactor, null);
        if (outlook != Outlook.WearsFaster) return PathOf(0, 1, null);

        var life = PathOf(0, 1, null).HoursAt(position.LimitPercent);
        change = new RateStep(chance.Between(0.3, 0.5) * life, chance.Between(2, 3));
        return PathOf(0, 1, change);
    }

    private double AgeOfCurrent(PositionFate fate, WearPath path, RateStep? change, Chance chance)
    {
        var life = path.HoursAt(position.LimitPercent);
        var week = span.HoursPerWeek;
        switch (fate.Outlook)
        {
            case Outlook.SwapNow:
                return Math.Min(life + chance.Between(1, 8) * week, path.HoursAt(1.12 * position.LimitPercent));
            case Outlook.PlanASwap:
                return Math.Max(life - chance.Between(2, 12) * week, 0.5 * life);
            case Outlook.JustFitted:
                return chance.Between(2, 9) / 7 * week;
            case Outlook.WearsFaster:
                return change!.AtHours + Math.Min(chance.Between(11, 15) * week, 0.85 * (life - change.AtHours));
            case Outlook.BadLot:
                return Math.Min(chance.Between(18, 22) * week, 0.8 * life);
            default:
                var age = Math.Min(chance.Between(0.08, 0.72) * life, Math.Max(life - 30 * week, 0.15 * life));
                return fate.AreReplacementsUnrecorded ? Math.Min(age, 0.5 * (span.EndHour - span.StartHour)) : age;
        }
    }

    /// <summary>The path of a chain so many after (or before) the current one, and its share of the limit at removal.</summary>
    private (WearPath Path, double ShareOfLimit) Draw(int after)
    {
        var chance = ChanceOf(after, "removal");
        var life = PathOf(after, 1, null).HoursAt(position.LimitPercent);
        var change = chance.Happens(0.2)
            ? new RateStep(chance.Between(0.2, 0.8) * life, Math.Exp(chance.Normal(0.9, 0.3)))
            : null;
        return (PathOf(after, 1, change), chance.Between(0.88, 1.08));
    }

    private WearPath PathOf(int after, double rateFactor, RateStep? change)
    {
        var chance = ChanceOf(after, "wear");
        var rate = rateFactor * WearLaw.RateOfOne(position, chance);
        return new WearPath(WearLaw.ConstantsOfOne(chance), new RateHistory(rate, chance, change));
    }

    private SimulatedChain Fitted(WearPath path, double fittedAtHour, double removedAtHour)
    {
        var day = span.Running.MomentAt(fittedAtHour);
        var lot = string.Create(CultureInfo.InvariantCulture, $"{(char)('A' + day.Month / 4)}-{day:yy}{day.DayOfYear / 14:00}");
        return new SimulatedChain(path, lot, position.LimitPercent, fittedAtHour, removedAtHour);
    }

    private Chance ChanceOf(int after, string what) =>
        Chance.For(seed, position.ChainName, after.ToString(CultureInfo.InvariantCulture), what);
}
