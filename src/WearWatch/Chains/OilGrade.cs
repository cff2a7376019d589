using WearWatch.Phrases;
using WearWatch.Units;

namespace WearWatch.Chains;

/// <summary>
/// Which oil suits the surroundings' temperature. No grease and no heavy residual oil: they do not reach the joint.
/// </summary>
/// <param name="Sae">SAE grade of an engine oil.</param>
/// <param name="IsoVg">ISO viscosity grade.</param>
/// <param name="Source">Who says so.</param>
public sealed record OilGrade(string Sae, string IsoVg, string Source)
{
    /// <summary>What to know besides, such as that the temperature stands at a band's edge; or nothing.</summary>
    public Phrase Remark { get; init; } = Phrase.None;

    // Upper edge in degrees Celsius, SAE, ISO VG; the first begins at -5. Source: docs/references.md [13].
    private static readonly (double UpToC, string Sae, string IsoVg)[] Bands =
        [(5, "SAE 20", "46-68"), (40, "SAE 30", "100"), (50, "SAE 40", "150-220"), (60, "SAE 50", "320")];

    /// <summary>The grade as it stands on a can: ISO VG where the table gives it, else SAE.</summary>
    public string Name => IsoVg.Length > 0 ? $"ISO VG {IsoVg}" : Sae;

    /// <summary>The lowest temperature that the table knows.</summary>
    public static Temperature Lowest => new(-5);

    /// <summary>The highest temperature that the table knows.</summary>
    public static Temperature Highest => new(60);

    /// <summary>The grade for a temperature; at the edge of two bands the lower one, and it says so.</summary>
    /// <param name="ambient">Temperature where the chain runs.</param>
    /// <returns>The grade; null outside of the table: ask the maker of the oil.</returns>
    public static OilGrade? For(Temperature ambient)
    {
        if (ambient.Celsius < Lowest.Celsius) return null;
        foreach (var (upToC, sae, isoVg) in Bands)
        {
            if (ambient.Celsius > upToC) continue;
            var atEdge = ambient.Celsius == upToC && upToC < Highest.Celsius;
            return new OilGrade(sae, isoVg, "docs/references.md [13]")
            {
                Remark = atEdge ? Phrase.Of($"at the edge of two bands; the thinner oil is given") : Phrase.None,
            };
        }

        return null;
    }

    /// <summary>What another maker says for small and for large chains: the size matters by more than one grade.</summary>
    /// <remarks>Source: docs/references.md [11]. Up to 15.875 mm pitch, and from 38.1 mm; nothing is said between. The last
    /// figure of large chains is printed in two ways, 50 and 60; the lower stands here.</remarks>
    /// <param name="pitchMm">Pitch in millimetres.</param>
    /// <param name="ambient">Temperature where the chain runs.</param>
    public static OilGrade? BySize(double pitchMm, Temperature ambient)
    {
        string[] grades = pitchMm switch
        {
            <= 15.876 => ["SAE 10W", "SAE 20", "SAE 30", "SAE 40"],
            >= 38.09 => ["SAE 30", "SAE 40", "SAE 50", "SAE 50"],
            _ => [],
        };
        double[] upToC = [0, 40, 50, 60];
        if (grades.Length == 0 || ambient.Celsius is < -10 or > 60) return null;
        return new OilGrade(grades[Array.FindIndex(upToC, edge => ambient.Celsius <= edge)], "", "docs/references.md [11]");
    }

    /// <summary>This grade, with what another maker says for the size of the chain, where that differs.</summary>
    /// <param name="card">The chain.</param>
    /// <param name="ambient">Temperature where it runs.</param>
    public OilGrade BesideSize(ChainCard card, Temperature ambient) =>
        card.Family.OilTablePitchMm(card.PitchMm) is { } pitchMm && BySize(pitchMm, ambient) is { } bySize && bySize.Sae != Sae
            ? this with
            {
                Remark = Phrase.Join("; ", [Remark, $"for this size another maker says {bySize.Sae} [11]"]),
            }
            : this;

    /// <summary>The grade for conveyor chain. Source: docs/references.md [49].</summary>
    /// <param name="ambient">Temperature where the chain runs.</param>
    public static OilGrade? ForConveyor(Temperature ambient) => ambient.Celsius switch
    {
        < -5 or > 65 => null,
        <= 25 => new OilGrade("SAE 30", "", "docs/references.md [49]"),
        <= 45 => new OilGrade("SAE 40", "", "docs/references.md [49]"),
        _ => new OilGrade("SAE 50", "", "docs/references.md [49]"),
    };
}
