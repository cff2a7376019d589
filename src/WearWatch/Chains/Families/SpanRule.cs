namespace WearWatch.Chains.Families;

/// <summary>Over how many pitches the trade measures a kind of chain.</summary>
/// <param name="Fewest">Fewer say little of it.</param>
/// <param name="Enough">So many are wanted near the limit; more only where the uncertainty needs them.</param>
/// <param name="IsFixed">Whether it is always the same number, whatever the pitch and the limit.</param>
/// <param name="Source">Who says so.</param>
public sealed record SpanRule(int Fewest, int Enough, bool IsFixed, string Source)
{
    private const double SampleMm = 610;

    /// <summary>From this pitch on the sample is twice as long.</summary>
    private const double LongSampleFromMm = 25.4;

    /// <summary>
    /// Over 20 to 40 pitches little error is left of measuring in place [10]; a sample of 610 mm, of 1,220 mm from the pitch of
    /// 25.4 mm on [7], lies among them.
    /// </summary>
    internal static SpanRule OfShortPitch { get; } = new(20, 40, IsFixed: false, "docs/references.md [7], [10]");

    /// <summary>At least 4 links [27], and the sample of [7]; near the limit up to 24 (common practice).</summary>
    internal static SpanRule OfLongPitch { get; } = new(4, 24, IsFixed: false, "docs/references.md [7], [27]");

    /// <summary>A number of links that is always the same.</summary>
    internal static SpanRule OfLinks(int links) => new(links, links, IsFixed: true, Sourced.Memory);

    /// <summary>How many pitches are usual.</summary>
    /// <param name="pitchMm">Nominal pitch in millimetres; above zero.</param>
    public int UsualFor(double pitchMm) => PitchesOf(SampleFor(pitchMm), pitchMm);

    /// <summary>How many are wanted near the limit: over twice the sample, where so many are not too many.</summary>
    /// <param name="pitchMm">Nominal pitch in millimetres; above zero.</param>
    public int NearLimitFor(double pitchMm) => PitchesOf(2 * SampleFor(pitchMm), pitchMm);

    private static double SampleFor(double pitchMm) => pitchMm < LongSampleFromMm ? SampleMm : 2 * SampleMm;

    private int PitchesOf(double lengthMm, double pitchMm) =>
        Math.Clamp((int)Math.Ceiling(lengthMm / pitchMm - 1e-9), Fewest, Enough);
}
