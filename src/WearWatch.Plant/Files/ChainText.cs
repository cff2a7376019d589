using WearWatch.Chains;

namespace WearWatch.Plant.Files;

/// <summary>A row of chains.csv.</summary>
public static class ChainText
{
    /// <summary>The chain that a row describes; null when it is at fault.</summary>
    /// <param name="fields">The row.</param>
    /// <param name="known">The chains registered already: columns that the file does not have keep what is registered.</param>
    public static ChainCard? Read(RowFields fields, IReadOnlyDictionary<string, ChainCard> known)
    {
        var name = fields.Needed("chain", $"write the chain's name.");
        fields.Label("chain");
        var old = known.GetValueOrDefault(name);
        if (PitchMm(fields, old) is not { } pitchMm || FamilyText.Of(fields, old, mustBeTold: false) is not { } family
            || fields.Faults.Count > 0) return null;
        var card = (old ?? new ChainCard { Name = name, PitchMm = pitchMm }) with { PitchMm = pitchMm, Family = family };
        card = ChainColumns.All.Where(c => fields.Has(c.Name)).Aggregate(card, (c, column) => column.Read(fields, c));
        if (fields.Faults.Count > 0) return null;
        foreach (var fault in card.LinkFaults) fields.Fault(LinkColumns.Of(fault), fault.Reason);
        foreach (var (column, reason) in LiftingCard.Faults(card)) fields.Fault(column, reason);
        return fields.Faults.Count > 0 ? null : card;
    }

    /// <summary>The pitch as it is written, else that of the chain type, else the one that is registered.</summary>
    private static double? PitchMm(RowFields fields, ChainCard? old)
    {
        if (fields.Text("pitch_mm").Length > 0) return fields.Number("pitch_mm", 0.001, 2000);
        var type = fields.Text("chain_type");
        if (ChainCatalogue.Find(type)?.PitchMm?.Value is { } byType) return byType;
        if (old is not null && !fields.Has("pitch_mm") && (type.Length == 0 || type == old.ChainType)) return old.PitchMm;
        fields.Fault(fields.Has("pitch_mm") ? "pitch_mm" : "chain_type", type.Length > 0
            ? Phrase.Of($"The chain type '{type}' is not known here: write its pitch in millimetres into pitch_mm.")
            : $"Empty: a chain needs its pitch in millimetres or a known chain type.");
        return null;
    }
}
