using WearWatch.Phrases;

namespace WearWatch.Chains;

/// <summary>Which facts an event of its kind can tell, and which cannot be; fields by their names in the file format.</summary>
public static class EventFacts
{
    /// <summary>More pitches nobody takes out at once.</summary>
    public const int MostPitchesOut = 10_000;

    /// <summary>No chain has more pitches.</summary>
    public const int MostPitches = 1_000_000;

    /// <summary>No sprocket has fewer teeth.</summary>
    public const int FewestTeeth = 5;

    /// <summary>No sprocket has more teeth.</summary>
    public const int MostTeeth = 1000;

    /// <summary>No take-up moves farther, in millimetres.</summary>
    public const double MostTakeUpMm = 100_000;

    /// <summary>Whether the take-up is read after work of this kind, since the slack is looked at or changed by it.</summary>
    public static bool TellsTakeUp(ChainEventKind kind) => kind is
        ChainEventKind.Tensioned or ChainEventKind.Shortened or ChainEventKind.Replacement or ChainEventKind.Inspection;

    /// <summary>What an event tells that only another kind can tell.</summary>
    public static IEnumerable<(string Field, Phrase Reason)> Faults(ChainEvent told)
    {
        if (told.Kind != ChainEventKind.Replacement && told.Lot.Length > 0)
            yield return ("lot", $"Only a chain that was fitted has a lot: leave it empty.");
        if (told.Kind != ChainEventKind.Replacement && told.Broke)
            yield return ("broke", $"Only a replacement records that the old chain broke: leave it empty.");
        if (told.Kind != ChainEventKind.Shortened && told.PitchesOut is not null)
            yield return ("pitches_out", $"Only a shortening takes pitches out: leave it empty.");
        if (told.Kind != ChainEventKind.Replacement && told.NewPitches is not null)
            yield return ("new_pitches", $"Only a replacement records how many pitches the new chain has: leave it empty.");
        if (told.Kind != ChainEventKind.SprocketReplaced && told.NewTeeth is not null)
            yield return ("new_teeth", $"Only a replaced sprocket records how many teeth the new one has: leave it empty.");
        if (told.Kind != ChainEventKind.Oiling && told.Oil != OilApplied.Untold)
            yield return ("oil_method", $"Only a lubrication has a method, a grade or an amount: leave them empty.");
    }

    /// <summary>What an event tells that cannot be at this chain.</summary>
    /// <param name="told">The event.</param>
    /// <param name="card">The chain.</param>
    /// <param name="pitchesOutBefore">Pitches that were taken out of it before.</param>
    public static IEnumerable<(string Field, Phrase Reason)> FaultsAt(ChainEvent told, ChainCard card, int pitchesOutBefore = 0)
    {
        if (told.Kind == ChainEventKind.Shortened && !card.MayBeShortened)
        {
            yield return ("event", $"This chain is never shortened, spliced or mended in part: it is replaced whole.");
            yield break;
        }

        if (told.PitchesOut is not { } pitches) yield break;
        if (card.Pitches - pitchesOutBefore is { } left && pitches >= left)
            yield return ("pitches_out", $"The chain has only {left} pitches.");
        if (int.IsOddInteger(pitches) && !card.Family.ClosesAtOdd)
            yield return ("pitches_out", $"There is no offset link for such a chain: pitches are taken out of it in pairs.");
    }
}
