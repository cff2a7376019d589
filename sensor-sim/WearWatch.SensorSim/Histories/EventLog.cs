using WearWatch.SensorSim.Plant;
using WearWatch.SensorSim.Randomness;
using WearWatch.SensorSim.Running;

namespace WearWatch.SensorSim.Histories;

/// <summary>What happened at one position, from the beginning of the records as far into the future as anybody asks.</summary>
internal sealed class EventLog(
    int seed, MillPosition position, PositionFate fate, ChainLives lives, HourMeter meter, HistorySpan span)
{
    /// <summary>What happened before a moment, in order.</summary>
    public IEnumerable<MillEvent> Until(DateTimeOffset end) =>
        new[]
            {
                Swaps(end), MeterExchange(), Oilings(end), Tensionings(end).Select(WithTakeUp), Inspections(end),
                Shortenings(end).Select(WithTakeUp),
            }
            .SelectMany(events => events)
            .Where(e => e.At >= span.StartsAt && e.At < end)
            .OrderBy(e => e.At);

    /// <summary>One of four chains that ran on past their limit broke.</summary>
    private IEnumerable<MillEvent> Swaps(DateTimeOffset end)
    {
        var chance = ChanceOf("break");
        var chains = lives.FittedUntil(span.Running.HoursAt(end)).ToList();
        return chains.Zip(chains.Skip(1), (old, chain) => new MillEvent(
            position.ChainName, MillEventKind.Replacement, span.Running.MomentAt(chain.FittedAtHour),
            meter.CountAt(chain.FittedAtHour), meter.CountAt(chain.FittedAtHour))
        {
            IsRecorded = !fate.AreReplacementsUnrecorded,
            Lot = chain.Lot,
            Broke = chance.Happens(0.25) && old.HoursLeftAt(old.RemovedAtHour) == 0,
        });
    }

    private IEnumerable<MillEvent> MeterExchange() => meter.Reset is not { } reset
        ? []
        : [new MillEvent(
            position.ChainName, MillEventKind.MeterReset, span.Running.MomentAt(reset.AtHour), meter.CountBeforeReset, 0)
        {
            IsRecorded = reset.Recorded,
        }];

    /// <summary>
    /// Every week by hand where that is the rule, else now and then; some have been forgotten of late. One amount of eight was
    /// not written down.
    /// </summary>
    private IEnumerable<MillEvent> Oilings(DateTimeOffset end)
    {
        if (position.Duty.Lubrication is not (Lubrication.Manual or Lubrication.Poor)) return [];
        var isRegular = position.Duty.Lubrication == Lubrication.Manual;
        var chance = ChanceOf("oiling");
        var lapse = span.EndsAt.AddDays(-chance.Between(24, 60));
        return Recurring(MillEventKind.Oiling, isRegular ? 7 : 35, isRegular ? 0.06 : 0.3, chance, end)
            .Where(e => !fate.HasOilingLapsed || e.At < lapse || e.At >= span.EndsAt)
            .Select((e, number) =>
                e with { Oil = new OilBrought(position.OilGrade, number % 8 == 7 ? null : position.OilAmountMl) });
    }

    /// <summary>Leaf chains hang and round-link chains sag by weight: nothing to tension there.</summary>
    private IEnumerable<MillEvent> Tensionings(DateTimeOffset end) =>
        position.Size.Family is MillFamily.Leaf or MillFamily.RoundLink
            ? []
            : Recurring(MillEventKind.Tensioned, 170, 0.2, ChanceOf("tensioning"), end);

    private IEnumerable<MillEvent> Inspections(DateTimeOffset end) =>
        Recurring(MillEventKind.Inspection, 28, 0.04, ChanceOf("inspection"), end);

    /// <summary>The event with where the take-up then stood: a shaft between two spans moves by half of the growth.</summary>
    private MillEvent WithTakeUp(MillEvent told)
    {
        var hour = span.Running.HoursAt(told.At);
        var chain = lives.RunningAt(hour);
        var fittedAt = span.Running.MomentAt(chain.FittedAtHour);
        var taken = Shortenings(told.At.AddSeconds(1)).Where(e => e.At >= fittedAt).Sum(e => e.PitchesOut ?? 0);
        var grown = (position.Pitches - taken) * (1 + chain.Path.ElongationAt(chain.HoursAt(hour)) / 100) - position.Pitches;
        return told with { TakeUpMm = Math.Max(0, grown * position.Size.PitchMm / 2) };
    }

    /// <summary>On a conveyor whose take-up is at its end, a pair of pitches is taken out.</summary>
    private IEnumerable<MillEvent> Shortenings(DateTimeOffset end)
    {
        if (position.Size.Family is not (MillFamily.Conveyor or MillFamily.WeldedSteel)) yield break;
        var chance = ChanceOf("shortening");
        foreach (var chain in lives.FittedUntil(span.Running.HoursAt(end)).ToList())
        {
            var hour = chain.FittedAtHour + chain.Path.HoursAt(chance.Between(0.5, 0.8) * position.LimitPercent);
            if (chance.Happens(0.25) && hour < chain.RemovedAtHour)
                yield return At(MillEventKind.Shortened, span.Running.MomentAt(hour)) with { PitchesOut = 2 };
        }
    }

    private IEnumerable<MillEvent> Recurring(
        MillEventKind kind, double everyDays, double isLeftOut, Chance chance, DateTimeOffset end) =>
        Rota.Times(span.StartsAt, chance.Between(0.1, 1) * everyDays, everyDays, chance)
            .TakeWhile(at => at < end)
            .Where(_ => !chance.Happens(isLeftOut))
            .Select(at => At(kind, at));

    private MillEvent At(MillEventKind kind, DateTimeOffset at)
    {
        var count = meter.CountAt(span.Running.HoursAt(at));
        return new MillEvent(position.ChainName, kind, at, count, count);
    }

    private Chance ChanceOf(string what) => Chance.For(seed, position.ChainName, what);
}
