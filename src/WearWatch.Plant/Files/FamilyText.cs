using WearWatch.Chains;
using WearWatch.Chains.Families;

namespace WearWatch.Plant.Files;

/// <summary>Which kind of chain a row means. It is never guessed: an unknown designation asks for the kind.</summary>
/// <remarks>
/// A mistyped leaf chain that silently became a roller chain would be told to be shortened: docs/safety.md. Where nothing stands
/// in a file but a pitch, a roller chain is meant; that is the file's agreed form (docs/units-and-formats.md).
/// </remarks>
internal static class FamilyText
{
    private const string Column = "family";

    /// <summary>The kind; null when it cannot be told, which is then noted as a fault of the row.</summary>
    /// <param name="fields">The row.</param>
    /// <param name="known">The card as it is registered; null for a chain that is new.</param>
    /// <param name="mustBeTold">Whether a bare pitch does not do.</param>
    public static ChainFamily? Of(RowFields fields, ChainCard? known, bool mustBeTold)
    {
        var (type, told) = (fields.Text("chain_type"), fields.Text(Column));
        var byType = ChainCatalogue.Find(type)?.Family;
        if (told.Length > 0)
        {
            var family = fields.Family(Column);
            if (family is null || byType is null || family.LiftsByNature == byType.LiftsByNature) return family;
            fields.Fault(
                Column, $"{type} is {byType.Words} chain: a {family.Words} chain has another "
                    + $"designation.");
            return null;
        }

        if (byType is not null) return byType;
        if (known is not null && (type.Length == 0 || type == known.ChainType)) return known.Family;
        if (type.Length == 0 && !mustBeTold) return ChainFamily.Usual;
        var kinds = string.Join(", ", ChainFamily.All);
        fields.Fault(fields.Has(Column) ? Column : "chain_type", type.Length == 0
            ? Phrase.Of($"Without a designation its kind has to be given: family is one of {kinds}.")
            : $"The chain type '{type}' is not known here, so its kind has to be given: family is one of {kinds}.");
        return null;
    }
}
