using MathNet.Numerics.Distributions;
using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Phrases;
using WearWatch.Running;
using WearWatch.Trends;
using WearWatch.Wear;

namespace WearWatch.Lubrication;

/// <summary>
/// Whether a chain's wear rate fell after its oiling was changed: another way, another oil, or oil again after a long drought.
/// </summary>
/// <remarks>
/// Straight lines through the readings before and after the change, each with the variance of its slope from the readings'
/// scatter and from uneven wear; with a flat prior on both rates the probability that the later is lower is <c>Phi((b1 - b2) /
/// sqrt(v1 + v2))</c>.
/// </remarks>
/// <param name="What">What was changed, in words.</param>
/// <param name="AtHours">At which running hour of the chain.</param>
/// <param name="RateBefore">Wear rate before, in percent per 1,000 running hours.</param>
/// <param name="RateAfter">Wear rate after.</param>
/// <param name="ProbabilityFell">Probability that the rate is lower since.</param>
public sealed record OilEffectWatch(Phrase What, double AtHours, double RateBefore, double RateAfter, double ProbabilityFell)
{
    /// <summary>On either side so many readings are needed, and at most <see cref="MostReadings"/> are looked at.</summary>
    public const int FewestReadings = 3;
    private const int MostReadings = 8;

    /// <summary>Oil that was this many times older than usual at an oiling makes that oiling a change.</summary>
    private const double Drought = 3;

    /// <summary>What has to stand beside every such probability.</summary>
    public static Phrase Caution { get; } =
        $"Of twenty changes that do nothing, one will show 95 % or more by chance; "
        + $"load or dust may have changed at the same time.";

    /// <summary>The watch in words.</summary>
    public Phrase Words => $"{What} at {AtHours:#,0} running hours: {RateBefore:0.000} % per 1,000 h before, {RateAfter:0.000} "
        + $"% since; "
            + $"probability that the rate fell: {ProbabilityFell:P0}.";

    /// <summary>The last change that has enough readings on either side; null without one.</summary>
    /// <param name="life">The fitted chain.</param>
    /// <param name="readings">All readings of its position.</param>
    /// <param name="events">All events of its position, in the order in which they happened.</param>
    /// <param name="calendar">Lays dates on running hours.</param>
    public static OilEffectWatch? Of(
        FittedChain life, IReadOnlyList<Reading> readings, IReadOnlyList<ChainEvent> events, ProductionCalendar calendar)
    {
        var hours = LifeHours.Of(life, readings, calendar);
        var oilings = events.Where(e => e.BroughtOil)
            .Select(e => (e.Oil, At: hours.At(e.At, (e.CounterAfter ?? e.CounterBefore)?.Hours)))
            .Where(o => o.At >= 0).Select(o => (o.Oil, At: o.At!.Value)).OrderBy(o => o.At).ToList();
        var usual = oilings.Count < 3
            ? double.PositiveInfinity
            : Median.Of([.. oilings.Zip(oilings.Skip(1), (a, b) => b.At - a.At)]);
        for (var i = oilings.Count - 1; i > 0; i--)
        {
            if (Change(oilings[i - 1], oilings[i], usual) is not { } what) continue;
            if (Compare(what, oilings[i].At, life.Observations) is { } watch) return watch;
        }

        return null;
    }

    private static Phrase? Change((OilApplied Oil, double At) before, (OilApplied Oil, double At) now, double usualHours)
    {
        if (before.Oil.Method is { } was && now.Oil.Method is { } isNow && was != isNow)
            return $"The method of lubrication was changed";
        if (before.Oil.Grade.Length > 0 && now.Oil.Grade.Length > 0 && before.Oil.Grade != now.Oil.Grade)
            return $"The oil was changed from {before.Oil.Grade} to {now.Oil.Grade}";
        return now.At - before.At > Drought * usualHours ? Phrase.Of($"It was lubricated again after a long time") : null;
    }

    private static OilEffectWatch? Compare(Phrase what, double atHours, IReadOnlyList<Observation> observations)
    {
        List<Observation> before =
            [.. observations.Where(o => o.HoursSinceFitting >= 100 && o.HoursSinceFitting <= atHours).TakeLast(MostReadings)];
        List<Observation> after =
            [.. observations.Where(o => o.HoursSinceFitting >= 100 && o.HoursSinceFitting >= atHours).Take(MostReadings)];
        if (Line(before) is not { } first || Line(after) is not { } second) return null;
        var chance = Normal.CDF(0, 1, (first.Rate - second.Rate) / Math.Sqrt(first.Variance + second.Variance));
        return new OilEffectWatch(what, atHours, first.Rate, second.Rate, chance);
    }

    private static (double Rate, double Variance)? Line(List<Observation> readings)
    {
        if (readings.Count < FewestReadings) return null;
        var mean = readings.Average(o => o.HoursSinceFitting) / 1000;
        var spread = readings.Sum(o => Math.Pow(o.HoursSinceFitting / 1000 - mean, 2));
        if (!(spread > 0)) return null;
        var rate = readings.Sum(o => (o.HoursSinceFitting / 1000 - mean) * o.ElongationPercent) / spread;
        var scatter = readings.Average(o => o.ScatterPercent * o.ScatterPercent);
        var span = (readings[^1].HoursSinceFitting - readings[0].HoursSinceFitting) / 1000;
        // Wear goes unevenly even at a steady rate: over the span its sum scatters by eta r^2 D, and the slope by that over D^2.
        return (rate, scatter / spread + WearConstants.Default.UnevenWear * rate * rate / span);
    }
}
