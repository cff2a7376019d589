using System.Globalization;
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
    public static IReadOnlyList<string> Of(Assessment chain, ProductionCalendar calendar, DateTimeOffset now) =>
        [Expected(chain), Read(chain), .. Doubted(chain), .. Changed(chain), Ahead(chain), Dates(chain, calendar, now)];

    private static string Expected(Assessment chain)
    {
        var deviation = Math.Sqrt(chain.Prior.VarianceLogRate);
        var (low, high) = (Rate(chain.Prior.MeanLogRate, -deviation), Rate(chain.Prior.MeanLogRate, deviation));
        return $"Before its first reading a chain here was expected to wear by {Rate(chain.Prior.MeanLogRate, 0)} % in 1,000 "
            + $"running hours, "
            + $"most likely between {low} and {high} % ({chain.Prior.Source}).";
    }

    private static string Read(Assessment chain)
    {
        if (chain.Observations.Count == 0)
            return "It has no reading that could be used; all that follows rests on that expectation.";
        var (first, last) = (chain.Observations[0].Observation, chain.Observations[^1].Observation);
        var count = chain.Observations.Count == 1
            ? Text($"One reading, at {last.HoursSinceFitting:#,0} running hours,")
            : Text($"{chain.Observations.Count} readings from {first.HoursSinceFitting:#,0} to {last.HoursSinceFitting:#,0} ")
                + "running hours";
        var verb = chain.Observations.Count == 1 ? "puts" : "put";
        var since = chain.History.Current.FittingKnown ? "" : " Its fitting is not known: hours count from the first reading.";
        var wear = Text($"{chain.ElongationPercent:0.00} % (± {2 * chain.ElongationStandardDeviationPercent:0.00})");
        var (low, high) =
            (Rate(chain.View.LogRate, -chain.LogRateStandardDeviation), Rate(chain.View.LogRate, chain.LogRateStandardDeviation));
        return $"{count} {verb} it at {wear} and {Rate(chain.View.LogRate, 0)} % in 1,000 h, most likely between {low} and "
            + $"{high}.{since}";
    }

    private static IEnumerable<string> Doubted(Assessment chain)
    {
        foreach (var judged in chain.Observations.Where(j => Math.Max(j.ProbabilityMisread, j.ProbabilityMisreadNow) > Worth))
        {
            var (observation, misread, now) = (judged.Observation, judged.ProbabilityMisread, judged.ProbabilityMisreadNow);
            yield return Text($"The reading of {observation.ElongationPercent:0.00} % at {observation.HoursSinceFitting:#,0} h ")
                + (misread > Worth
                    ? Text($"was doubted when it came (misread with probability {misread:P0})")
                    : "was believed when it came")
                + (now > Worth
                    ? Text($"{(now.Equals(misread) ? "" : Text($" and is by now with {now:P0}"))} and weighs accordingly less.")
                    : "; the readings since bear it out.");
        }

        if (chain.History.HeldBack.Count > 0)
        {
            yield return chain.History.HeldBack.Count == 1
                ? "One reading that cannot be was left out."
                : Text($"{chain.History.HeldBack.Count} readings that cannot be were left out.");
        }
    }

    private static IEnumerable<string> Changed(Assessment chain)
    {
        if (chain.View.ProbabilityRateRose > Worth)
        {
            var (since, before) = RateRise.Of(chain);
            yield return Text($"Its rate rose from {before:0.00#} % with probability {chain.View.ProbabilityRateRose:P0}, after ")
                + Text($"about {since:#,0} h.");
        }

        if (chain.View.ProbabilityAccelerating > Worth)
            yield return Text($"It wears faster and faster with probability {chain.View.ProbabilityAccelerating:P0}, as chains ")
                + "do late in life.";
    }

    private static string Ahead(Assessment chain)
    {
        var limit = Text($"the limit of {chain.Limit.Percent:0.0#} %");
        if (chain.Forecast.ProbabilityPassed > 0.95) return $"It has passed {limit}.";
        var late = chain.Forecast.LateHours is { } hours ? Text($"{hours:#,0} h") : "no upper limit yet";
        return Text($"With what may still change, {limit} is {chain.Forecast.MiddleHours:#,0} h away from the last reading: ")
            + Text($"one chance in twenty that it is less than {chain.Forecast.EarlyHours:#,0} h, one in twenty that it is more ")
            + Text($"than {late}.");
    }

    private static string Dates(Assessment chain, ProductionCalendar calendar, DateTimeOffset now) =>
        (chain.DateAt(5, calendar, now), chain.DateAt(50, calendar, now)) switch
        {
            ({ } early, { } middle) when early > now =>
                Text($"By the production calendar: early date {early:yyyy-MM-dd}, median date {middle:yyyy-MM-dd}."),
            ({ }, _) => "Due now.",
            _ => "No day is in sight.",
        };

    private static string Rate(double logRate, double off) =>
        Math.Exp(logRate + off).ToString("0.00#", CultureInfo.InvariantCulture);

    private static string Text(FormattableString text) => PlainText.Of(text);
}
