using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Plant.Files;
using WearWatch.Plant.Settings;

namespace WearWatch.Plant.Register;

/// <summary>A card as text by column of chains.csv: what a form or a program sends. The rules are those of the file.</summary>
public static class CardText
{
    private const string Name = "chain";
    private const string Pitch = "pitch_mm";

    /// <summary>The chain's name and the columns of chains.csv.</summary>
    public static IEnumerable<string> Columns => ChainColumns.All.Select(c => c.Name).Prepend(Name);

    /// <summary>A card as text; what a file leaves out as usual stays empty.</summary>
    public static Dictionary<string, string> Write(ChainCard card)
    {
        var texts = ChainColumns.All.ToDictionary(c => c.Name, c => c.Write(card));
        texts[Name] = card.Name;
        return texts;
    }

    /// <summary>Reads a card. A column that is left out is empty.</summary>
    /// <param name="texts">Text by column.</param>
    /// <param name="zone">The plant's time zone, for times that name none.</param>
    public static CardReading Read(IReadOnlyDictionary<string, string> texts, TimeZoneInfo zone)
    {
        var fields = RowFields.Of(Columns, texts, zone);
        var name = fields.Label(Name);
        var pitchMm = PitchMm(fields);
        var family = FamilyText.Of(fields, null, mustBeTold: true);
        var typed = new ChainCard { Name = name, PitchMm = pitchMm ?? 1, Family = family ?? ChainFamily.Usual };
        var card = ChainColumns.All
            .Where(column => column.Usual.Length == 0 || fields.Text(column.Name).Length > 0)
            .Aggregate(typed, (c, column) => column.Read(fields, c));
        if (card.LimitPercent is null) card = card with { LimitSetReason = "" };
        return new CardReading(
            pitchMm is null || family is null ? null : card, [.. fields.Faults.Select(f => new Refusal(f.Column, f.Reason))]);
    }

    /// <summary>
    /// The pitch as it is written, else that of the chain type; what is wrong with a written one is told by its column.
    /// </summary>
    private static double? PitchMm(RowFields fields)
    {
        if (fields.Text(Pitch).Length > 0)
            return double.TryParse(fields.Text(Pitch), System.Globalization.CultureInfo.InvariantCulture, out var mm)
                && mm is >= 0.001 and <= 2000 ? mm : null;
        if (ChainCatalogue.Find(fields.Text("chain_type"))?.PitchMm?.Value is { } byType) return byType;
        fields.Fault(Pitch, $"Write the pitch, or a chain type that is known here.");
        return null;
    }
}
