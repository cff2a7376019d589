using WearWatch.Lives;

namespace WearWatch.Dashboard.Engineer.Compare;

/// <summary>One measure of both sides.</summary>
/// <param name="Measure">What is measured, with its unit.</param>
/// <param name="A">The one side's figure in words, with how much stands behind it.</param>
/// <param name="B">The other's.</param>
/// <param name="Difference">B against A; null where too little is known.</param>
/// <param name="IsShare">Whether the difference is one of shares rather than a ratio.</param>
public sealed record CompareLine(Phrase Measure, Phrase A, Phrase B, Difference? Difference, bool IsShare = false)
{
    /// <summary>The difference in words.</summary>
    public Phrase DifferenceInWords => Difference switch
    {
        null => $"too little is known",
        { } d when IsShare => $"{Points(d.Value)} ({Points(d.Interval.Low)} to {Points(d.Interval.High)})",
        { } d => $"{EngineerWords.Factor(d.Value)} "
            + $"({EngineerWords.Factor(d.Interval.Low)} to {EngineerWords.Factor(d.Interval.High)})",
    };

    /// <summary>What to make of it.</summary>
    public Phrase Verdict => Difference switch
    {
        null => Phrase.None,
        { IsSeen: true } => $"they differ",
        _ => $"no difference is seen",
    };

    private static Phrase Points(double share) => $"{100 * share:+0;-0;0} points";
}
