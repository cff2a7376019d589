using WearWatch.Chains;

namespace WearWatch.Gauging;

/// <summary>How far a link of round-steel chain is worn where it bears on its neighbour, by its diameter.</summary>
/// <remarks>
/// Links wear at the inside of their bends, so the chain lengthens over its links and each link gets thinner there. The diameter
/// is taken twice, at right angles, and the mean counts: <c>100 (d0 - dm)/d0</c> percent. Source of the rule: common practice.
/// </remarks>
public sealed record LinkWear
{
    private LinkWear(double newDiameterMm, double meanDiameterMm) =>
        (NewDiameterMm, MeanDiameterMm) = (newDiameterMm, meanDiameterMm);

    /// <summary>
    /// A link is out of use from here on, in percent of its diameter. Recalled and not read, so it advises and does not govern.
    /// </summary>
    public static Sourced DiscardPercent { get; } = Sourced.FromMemory(10);

    /// <summary>The link's diameter when new, in millimetres.</summary>
    public double NewDiameterMm { get; }

    /// <summary>Mean of the diameters measured at its most worn place, in millimetres.</summary>
    public double MeanDiameterMm { get; }

    /// <summary>How much of the diameter is gone, in percent; below zero for a link thicker than nominal.</summary>
    public double Percent => 100 * (NewDiameterMm - MeanDiameterMm) / NewDiameterMm;

    /// <summary>Whether the link has come to the discard figure.</summary>
    public bool IsDiscarded => Percent >= DiscardPercent.Value;

    /// <summary>What it says, in a sentence.</summary>
    public string Verdict => FormattableString.Invariant(
        $"The link has lost {Math.Max(0, Percent):0.0} % of its {NewDiameterMm:0.#} mm; links are discarded at ")
            + FormattableString.Invariant($"{DiscardPercent.Value:0} % ({DiscardPercent.Source}).")
        + (IsDiscarded ? " Take the chain out of use until a competent person has judged it." : "");

    /// <summary>Why these diameters cannot be of one link, or null when they can.</summary>
    public static string? Fault(double newDiameterMm, IReadOnlyList<double> diametersMm)
    {
        if (newDiameterMm is not (> 0 and <= 500)) return "A link's diameter lies above 0 and at most at 500 mm.";
        if (diametersMm.Count == 0) return "Measure at least one diameter; two, at right angles, are better.";
        return diametersMm.Where(d => !(d > 0 && d <= 1.2 * newDiameterMm))
            .Select(d => FormattableString.Invariant($"{d:0.###} mm is no diameter of a link of {newDiameterMm:0.###} mm."))
            .FirstOrDefault();
    }

    /// <summary>The wear of a link.</summary>
    /// <param name="newDiameterMm">Its diameter when new, in millimetres.</param>
    /// <param name="diametersMm">The diameters measured at one place of one link, in millimetres; two, at right angles.</param>
    /// <exception cref="ArgumentException">The diameters cannot be of one link; see <see cref="Fault"/>.</exception>
    public static LinkWear Of(double newDiameterMm, IReadOnlyList<double> diametersMm) =>
        Fault(newDiameterMm, diametersMm) is { } fault
            ? throw new ArgumentException(fault, nameof(diametersMm))
            : new LinkWear(newDiameterMm, diametersMm.Average());
}
