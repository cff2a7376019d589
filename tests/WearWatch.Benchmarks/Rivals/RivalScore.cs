using WearWatch.Trends;

namespace WearWatch.Benchmarks.Rivals;

/// <summary>How a method did on some decisions.</summary>
/// <param name="MedianError">
/// Median of the absolute error of the middle over the true hours left, where there is an answer.
/// </param>
/// <param name="WithinQuarter">
/// Share of the decisions answered to within 25 % of the true hours left; no answer is a miss.
/// </param>
/// <param name="Late">Share of the decisions with a middle beyond 1.1 times the true hours.</param>
/// <param name="Coverage">Share of the 90 % bands that held, of those that exist.</param>
/// <param name="Bounded">Share of the decisions with a band that has two ends.</param>
internal sealed record RivalScore(double MedianError, double WithinQuarter, double Late, double Coverage, double Bounded)
{
    public static RivalScore Of(IReadOnlyList<(Decision Asked, RivalAnswer Answer)> answers)
    {
        var errors = answers.Where(a => a.Answer.Middle is not null)
            .Select(a => Math.Abs(Math.Max(a.Answer.Middle!.Value, a.Asked.NowHours) - a.Asked.TrueHours)
                / (a.Asked.TrueHours - a.Asked.NowHours)).ToArray();
        var bands = answers.Where(a => a.Answer is { Early: not null } or { Late: not null }).ToList();
        return new(
            errors.Length == 0 ? double.NaN : Median.Of(errors),
            (double)errors.Count(e => e <= 0.25) / answers.Count,
            (double)answers.Count(a => a.Answer.Middle > 1.1 * a.Asked.TrueHours) / answers.Count,
            bands.Count == 0 ? double.NaN : (double)bands.Count(a => Holds(a.Asked, a.Answer)) / bands.Count,
            (double)answers.Count(a => a.Answer is { Early: not null, Late: < double.PositiveInfinity }) / answers.Count);
    }

    private static bool Holds(Decision asked, RivalAnswer answer) =>
        Math.Max(answer.Early ?? 0, asked.NowHours) <= asked.TrueHours
            && Math.Max(answer.Late ?? double.PositiveInfinity, asked.NowHours) >= asked.TrueHours;
}
