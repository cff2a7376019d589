using System.Globalization;
using WearWatch.Chains;
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Plant.Bench;

namespace WearWatch.Dashboard.Engineer.Workbench.ChainTypes;

/// <summary>Types side by side: a row a value, a column a type.</summary>
/// <param name="Types">The types.</param>
/// <param name="Facts">What stands in words: standard, family, names, strands.</param>
/// <param name="Rows">The values; one that no type has is left out.</param>
public sealed record TypeComparison(
    IReadOnlyList<ChainType> Types, IReadOnlyList<(Phrase Name, IReadOnlyList<string> Words)> Facts,
    IReadOnlyList<ComparedLine> Rows)
{
    public static TypeComparison Of(IReadOnlyList<ChainType> types, UnitPreference units)
    {
        var values = types.Select(TypeValue.Of).ToList();
        var rows = values.Count == 0 ? [] : Enumerable.Range(0, values[0].Count)
            .Where(row => values.Any(v => v[row].Value is not null))
            .Select(row => new ComparedLine(values[0][row].Name, [.. values.Select(v => CellOf(v[row], units))]));
        return new TypeComparison(types,
        [
            ($"Standard", [.. types.Select(t => t.Standard)]),
            ($"Kind", [.. types.Select(t => T[$"{t.Family.Words}"])]),
            ($"Strands", [.. types.Select(t => t.Strands.ToString(CultureInfo.CurrentCulture))]),
            ($"Also called", [.. types.Select(t => t.AlsoCalled.Count > 0 ? string.Join(", ", t.AlsoCalled) : Show.Nothing)]),
            ($"Same sprockets as", [.. types.Select(t => t.Counterpart.Length > 0 ? t.Counterpart : Show.Nothing)]),
            ($"Pitches made",
                [.. types.Select(t => t.PitchChoicesMm.Count > 0 ? string.Join(", ", t.PitchChoicesMm) + " mm" : Show.Nothing)]),
        ], [.. rows]);
    }

    private static ComparedCell? CellOf(TypeValue value, UnitPreference units) =>
        value.Value is not { } sourced ? null : new ComparedCell(
        value.Dimension switch
        {
            TypeDimension.Length => units.OfLength(sourced.Value),
            TypeDimension.Area => units.OfArea(sourced.Value),
            TypeDimension.Force => units.OfForce(sourced.Value),
            _ => T[$"at most {sourced.Value:0.###} %"],
        },
        sourced);
}

/// <summary>A value of all compared types.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Cells">One for each type; null when not known.</param>
public sealed record ComparedLine(Phrase Name, IReadOnlyList<ComparedCell?> Cells);

/// <summary>A value of one type, in the person's units, with who says so.</summary>
public sealed record ComparedCell(string Text, Sourced Value);
