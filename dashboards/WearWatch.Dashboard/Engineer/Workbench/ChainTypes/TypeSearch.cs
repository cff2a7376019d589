using WearWatch.Chains;
using WearWatch.Plant.Bench;

namespace WearWatch.Dashboard.Engineer.Workbench.ChainTypes;

/// <summary>Which types of the catalogue are looked at. It stands in the address.</summary>
/// <remarks>
/// Names: <c>find</c>, <c>family</c>, <c>pitch_mm</c>, <c>all</c> for the whole list, <c>compare</c> with commas between.
/// </remarks>
public sealed record TypeSearch(IReadOnlyList<ChainType> Found, IReadOnlyList<ChainType> Compared)
{
    /// <summary>More columns nobody reads side by side.</summary>
    public const int MostCompared = 4;

    /// <summary>How near a pitch must come to one that was asked for: a caliper tells no better over one link.</summary>
    private const double PitchWithinMm = 0.3;

    /// <summary>Reads what is asked.</summary>
    public static TypeSearch Of(Asked asked)
    {
        var family = asked.Family("family");
        var pitchMm = asked.Number("pitch_mm", 0.1, 2000);
        var found = ChainCatalogue.Search(asked.Text("find"))
            .Where(t => family is null || t.Family == family)
            .Where(t => pitchMm is not { } wanted || Near(t, wanted));
        var compared = asked.Text("compare").Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .Select(ChainCatalogue.Find).OfType<ChainType>().DistinctBy(t => t.Designation).Take(MostCompared);
        return new TypeSearch([.. found], [.. compared]);
    }

    /// <summary>The address with a type put beside the others, or taken away.</summary>
    public BenchAddress Toggle(BenchAddress address, string designation)
    {
        var names = Compared.Select(t => t.Designation).ToList();
        if (!names.Remove(designation)) names.Add(designation);
        return address.With("compare", string.Join(',', names));
    }

    public bool IsCompared(ChainType type) => Compared.Any(t => t.Designation == type.Designation);

    private static bool Near(ChainType type, double pitchMm) => type.PitchMm is { } pitch
        ? Math.Abs(pitch.Value - pitchMm) <= PitchWithinMm
        : type.PitchChoicesMm.Any(p => Math.Abs(p - pitchMm) <= PitchWithinMm);

    /// <summary>The pitch of a type in words: one, or the choice.</summary>
    public static string PitchOf(ChainType type, Kit.Words.UnitPreference units) => type.PitchMm is { } pitch
        ? units.OfLength(pitch.Value)
        : type.PitchChoicesMm.Count == 0 ? Kit.Words.Show.Nothing
        : T[$"{type.PitchChoicesMm[0]:0.#} to {type.PitchChoicesMm[^1]:0.#} mm"];
}
