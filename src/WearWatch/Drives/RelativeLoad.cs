using WearWatch.Phrases;
using WearWatch.Units;

namespace WearWatch.Drives;

/// <summary>
/// How hard a chain is worked, as a share of what it may be: computed from what is known on site, or not known.
/// </summary>
/// <param name="Share">The share; 1 is all that it may carry. Null where it cannot be computed: it is never guessed.</param>
/// <param name="Basis">From what it was computed, or what is missing.</param>
public sealed record RelativeLoad(double? Share, Phrase Basis)
{
    /// <summary>Of a drive: its power times the service factor over the classic rating, docs/references.md [32], [33].</summary>
    /// <param name="asked">The drive's power times the service factor.</param>
    /// <param name="rated">What the chain may transmit; null where no formula covers it.</param>
    public static RelativeLoad OfDrive(Power asked, Power? rated) => rated is { Watts: > 0 and var most }
        ? new(asked.Watts / most, $"power times service factor over the classic rating [32], [33]")
        : new(null, $"not known: no rating covers this chain");

    /// <summary>Of a level conveyor: friction of all that its chains carry, over a seventh of their tensile strength.</summary>
    /// <remarks><c>F = g m mu</c>, m the mass of chains, attachments and goods that they carry in kilograms, mu the friction of
    /// sliding or rolling on the track. Mechanics; the friction is told, never assumed. A seventh is common practice.</remarks>
    /// <param name="carriedKilograms">The mass that all strands carry, in kilograms; above zero.</param>
    /// <param name="friction">Coefficient of friction, 0 to 1.</param>
    /// <param name="tensileKilonewtons">Tensile strength of all strands together; null where it is not known.</param>
    public static RelativeLoad OfConveyor(double carriedKilograms, double friction, double? tensileKilonewtons) =>
        tensileKilonewtons is > 0 and var tensile
            ? new(carriedKilograms * friction * Force.StandardGravity / (1000 * tensile * DriveFigures.UsualPullShare),
                $"friction of what it carries over a seventh of its tensile strength")
            : new(null, $"not known: the tensile strength is not on record");
}
