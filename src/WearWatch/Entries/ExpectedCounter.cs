using WearWatch.Phrases;

namespace WearWatch.Entries;

/// <summary>What an hour counter is expected to show.</summary>
/// <param name="LastH">What it showed last, in hours.</param>
/// <param name="AboutH">The middle of what is expected, in hours.</param>
/// <param name="DeviationHours">The standard deviation of it, in hours.</param>
/// <param name="MostH">More than this it cannot show, since no more hours have passed; null where no dates tell.</param>
public readonly record struct ExpectedCounter(double LastH, double AboutH, double DeviationHours, double? MostH)
{
    /// <summary>Without dates another place of the same visit stands at the same counter.</summary>
    private const double SameVisitHours = 12;

    /// <summary>That a counter does not fit, and what was expected.</summary>
    public Phrase Words => MostH is { } most
        ? Phrase.Of($"This counter does not fit: after {LastH:#,0.#} h about {AboutH:#,0} h was expected, "
            + $"at most {most:#,0} h by the days that have passed.")
        : $"This counter does not fit: after {LastH:#,0.#} h about {AboutH:#,0} h was expected.";

    /// <summary>Whether a counter lies within so many standard deviations; without dates those of ln(hours).</summary>
    internal bool IsNear(double counterH, double deviations)
    {
        if (MostH is not null) return Math.Abs(counterH - AboutH) <= deviations * DeviationHours;
        var (hours, usual) = (counterH - LastH, AboutH - LastH);
        return hours is >= 0 and <= SameVisitHours
            || (hours > 0 && Math.Abs(Math.Log(hours / usual)) <= deviations * DeviationHours / usual);
    }
}
