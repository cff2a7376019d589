using WearWatch.Phrases;

namespace WearWatch.Chains.Links;

/// <summary>The nominal size of a round link.</summary>
public sealed record LinkSize
{
    private const double ShortestPitchInDiameters = 2.5;
    private const double LongestPitchInDiameters = 7;
    private const double ThinnestMm = 2;
    private const double ThickestMm = 120;

    private LinkSize(double diameterMm, double pitchMm) => (DiameterMm, PitchMm) = (diameterMm, pitchMm);

    /// <summary>Diameter of the steel, d, in millimetres.</summary>
    public double DiameterMm { get; }

    /// <summary>Pitch, which is the inner length of one link, p, in millimetres.</summary>
    public double PitchMm { get; }

    /// <summary>Why no link is so; null when one may be. The bounds of pitch to diameter: common practice.</summary>
    /// <param name="diameterMm">Diameter of the steel in millimetres.</param>
    /// <param name="pitchMm">Pitch in millimetres.</param>
    public static Phrase? Fault(double diameterMm, double pitchMm)
    {
        if (diameterMm is not (>= ThinnestMm and <= ThickestMm))
            return $"A round link's steel is {ThinnestMm:0} to {ThickestMm:0} mm thick.";
        return pitchMm / diameterMm is >= ShortestPitchInDiameters and <= LongestPitchInDiameters
            ? default(Phrase)
            : $"A link of {diameterMm:0.###} mm steel has a pitch of "
                + $"{ShortestPitchInDiameters * diameterMm:0.#} to "
                + $"{LongestPitchInDiameters * diameterMm:0.#} mm, not {pitchMm:0.###} mm.";
    }

    /// <summary>A size.</summary>
    /// <exception cref="ArgumentException">No link is so; see <see cref="Fault"/>.</exception>
    public static LinkSize Of(double diameterMm, double pitchMm) => Fault(diameterMm, pitchMm) is { } fault
        ? throw new ArgumentException(fault.ToString(), nameof(diameterMm))
        : new LinkSize(diameterMm, pitchMm);

    /// <summary>
    /// Nominal length over links in millimetres: <c>n p</c> over inner edges, <c>n p + 2 d</c> over outer ones.
    /// </summary>
    public double LengthOver(int links, bool outerEdges) => links * PitchMm + (outerEdges ? 2 * DiameterMm : 0);

    /// <summary>Such as <c>5x15</c>.</summary>
    public override string ToString() => FormattableString.Invariant($"{DiameterMm:0.###}x{PitchMm:0.###}");
}
