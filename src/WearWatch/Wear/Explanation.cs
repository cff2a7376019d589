using WearWatch.Phrases;
using WearWatch.Running;

namespace WearWatch.Wear;

/// <summary>Why a chain is forecast as it is, in plain sentences made from the numbers.</summary>
/// <remarks>
/// In this order: what was expected beforehand, what the readings say, what was doubted, what changed, what follows.
/// </remarks>
public static class Explanation
{
    private const double Worth = 0.2;

    /// <summary>The sentences.</summary>
    /// <param name="chain">The assessment to explain.</param>
    /// <param name="calendar">When its line runs.</param>
    /// <param name="now">The moment for which dates are given.</param>
    public static IReadOnlyList<Phrase> Of(Assessment chain, ProductionCalendar calendar, DateTimeOffset now) =>
        [Expected(chain), Read(chain), .. Doubted(chain), .. Changed(chain), Ahead(chain), Dates(chain, calendar, now)];

    private static Phrase Expected(Assessment chain)
    {
        var deviation = Math.Sqrt(chain.Prior.VarianceLogRate);
        var (low, high) = (Rate(chain.Prior.MeanLogRate, -deviation), Rate(chain.Prior.MeanLogRate, deviation));
        return $"Before its first reading a chain here was expected to wear by "
            + $"{Rate(chain.Prior.MeanLogRate, 0):0.00#} % in 1,000 running hours, most likely between {low:0.00#} and "
            + $"{high:0.00#} % "
            + $"({chain.Prior.Source}).";
    }

    private static Phrase Read(Assessment chain)
    {
        if (chain.Observations.Count == 0)
            return $"It has no reading that could be used; all that follows rests on that expectation.";
        var (first, last) = (chain.Observations[0].Observation, chain.Observations[^1].Observation);
        Phrase wear = $"{chain.ElongationPercent:0.00} % (± {2 * chain.ElongationStandardDeviationPercent:0.00})";
        var (mean, low, high) = (Rate(chain.View.LogRate, 0), Rate(chain.View.LogRate, -chain.LogRateStandardDeviation),
            Rate(chain.View.LogRate, chain.LogRateStandardDeviation));
        Phrase rate = $"{mean:0.00#} % in 1,000 h, most likely between {low:0.00#} and {high:0.00#}";
        return Phrase.Join(" ",
        [
            chain.Observations.Count == 1
                ? Phrase.Of($"One reading, at {last.HoursSinceFitting:#,0} running hours, puts it at {wear} and {rate}.")
                : $"{chain.Observations.Count} readings from {first.HoursSinceFitting:#,0} to {last.HoursSinceFitting:#,0} "
                    + $"running hours "
                    + $"put it at {wear} and {rate}.",
            chain.History.Current.FittingKnown ? Phrase.None
                : $"Its fitting is not known: hours count from the first reading.",
        ]);
    }

    private static IEnumerable<Phrase> Doubted(Assessment chain)
    {
        foreach (var judged in chain.Observations.Where(j => Math.Max(j.ProbabilityMisread, j.ProbabilityMisreadNow) > Worth))
        {
            var (observation, misread, now) = (judged.Observation, judged.ProbabilityMisread, judged.ProbabilityMisreadNow);
            var then = misread > Worth
                ? Phrase.Of($"was doubted when it came (misread with probability {misread:P0})")
                : $"was believed when it came";
            Phrase reading = $"The reading of {observation.ElongationPercent:0.00} % at {observation.HoursSinceFitting:#,0} h";
            yield return !(now > Worth) ? Phrase.Of($"{reading} {then}; the readings since bear it out.")
                : now.Equals(misread) ? Phrase.Of($"{reading} {then} and weighs accordingly less.")
                : $"{reading} {then} and is by now with {now:P0} and weighs accordingly less.";
        }

        if (chain.History.HeldBack.Count > 0)
        {
            yield return chain.History.HeldBack.Count == 1
                ? Phrase.Of($"One reading that cannot be was left out.")
                : $"{chain.History.HeldBack.Count} readings that cannot be were left out.";
        }
    }

    private static IEnumerable<Phrase> Changed(Assessment chain)
    {
        if (chain.View.ProbabilityRateRose > Worth)
        {
            var (since, before) = RateRise.Of(chain);
            yield return $"Its rate rose from {before:0.00#} % with probability {chain.View.ProbabilityRateRose:P0}, after "
                + $"about {since:#,0} h.";
        }

        if (chain.View.ProbabilityAccelerating > Worth)
            yield return $"It wears faster and faster with probability {chain.View.ProbabilityAccelerating:P0}, as chains "
                + $"do late in life.";
    }

    private static Phrase Ahead(Assessment chain)
    {
        Phrase limit = $"the limit of {chain.Limit.Percent:0.0#} %";
        if (chain.Forecast.ProbabilityPassed > 0.95) return $"It has passed {limit}.";
        var late = chain.Forecast.LateHours is { } hours ? Phrase.Of($"{hours:#,0} h") : $"no upper limit yet";
        return $"With what may still change, {limit} is {chain.Forecast.MiddleHours:#,0} h away from the last reading. "
            + $"One chance in twenty that it is less than {chain.Forecast.EarlyHours:#,0} h, one in twenty that it is more "
            + $"than {late}.";
    }

    private static Phrase Dates(Assessment chain, ProductionCalendar calendar, DateTimeOffset now) =>
        (chain.DateAt(5, calendar, now), chain.DateAt(50, calendar, now)) switch
        {
            ({ } early, { } middle) when early > now =>
                $"By the production calendar: early date {early}, median date {middle}.",
            ({ }, _) => $"Due now.",
            _ => $"No day is in sight.",
        };

    private static double Rate(double logRate, double off) => Math.Exp(logRate + off);
}
