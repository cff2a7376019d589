using WearWatch.Chains;
using WearWatch.Chains.Parts;
using WearWatch.Phrases;

namespace WearWatch.Parts;

/// <summary>Checks readings of parts before they are kept: only what no part has is refused, a bad part never is.</summary>
public static class PartFaults
{
    private const double MostMm = 10_000;
    private const double ThinnestShare = 0.3;
    private const double ThickestShare = 1.12;

    /// <summary>What cannot be, by the names of the fields in the files; empty when all is well.</summary>
    /// <param name="told">The reading.</param>
    /// <param name="card">The chain.</param>
    /// <param name="before">What was told of the part before.</param>
    public static IEnumerable<(string Field, Phrase Reason)> Of(PartReading told, ChainCard card, PartTold before)
    {
        var part = told.Part;
        if (card.Family.PartRules.All(r => r.Part != part))
        {
            yield return ("part", $"No such part is measured at a chain of this kind.");
            yield break;
        }

        if (!(told.Mm >= 0 && told.Mm <= MostMm) || (told.Mm == 0 && !part.Grows))
            yield return ("value", $"A reading between 0 and 10,000 mm is wanted.");
        if (part.Grows && told.Told.NewMm is not null)
            yield return ("new", $"This grows from nothing: leave its size when new empty.");
        var fresh = PartLimit.NewSize(card, part, told.Told with { NewMm = told.Told.NewMm ?? before.NewMm })?.Value;
        if (fresh is not > 0)
        {
            if (!part.Grows && told.Told.LimitMm is not null)
                yield return ("new", $"A limit needs the size when new beside it.");
            if (part.Grows && told.Told.LimitMm is not null and not > 0)
                yield return ("limit", $"A limit above nothing is wanted.");
            yield break;
        }

        if (told.Mm < ThinnestShare * fresh || told.Mm > ThickestShare * fresh)
            yield return ("value", $"{told.Mm:0.###} mm is nothing that a part of {fresh.Value:0.###} mm when new can have. "
                + $"Check the unit and the decimal point.");
        if (told.Told.LimitMm is { } limit && !(limit > 0 && limit < fresh))
            yield return ("limit", $"It shrinks: its limit lies between 0 and {fresh.Value:0.###} mm.");
    }
}
