using WearWatch.Plant.Files;
using WearWatch.Plant.Settings;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Planning;

/// <summary>Checks a plan that a program tells against what there is to plan.</summary>
public static class PlanCheck
{
    /// <summary>Characters that a note may have.</summary>
    public const int LongestNote = 400;

    /// <summary>
    /// The places that are told, and what is wrong with them; refusals name the field, such as <c>swaps[2].shutdown</c>.
    /// </summary>
    public static (IReadOnlyDictionary<string, DraftPlace> Places, IReadOnlyList<Refusal> Faults) Read(
        PlanDraft draft, PlanEntryJson told)
    {
        var (places, faults) = (new Dictionary<string, DraftPlace>(), new List<Refusal>());
        if (told.Revision is null)
            faults.Add(new("revision", $"Say from which revision it starts; the plan that is shown has it."));
        if (told.WhatIf?.ToWhatIf() is { IsReal: false })
            faults.Add(new("what_if", $"It was proposed under circumstances that are supposed. Propose under the real ones."));
        foreach (var (at, swap) in (told.Swaps ?? []).Index())
        {
            var (place, fault) = PlaceOf(draft, swap);
            if (fault is null && !places.TryAdd(swap.Chain!, place!)) fault = new("chain", $"'{swap.Chain}' stands twice.");
            if (fault is null) continue;
            faults.Add(fault with { Field = FormattableString.Invariant($"swaps[{at}].{fault.Field}") });
        }

        if (faults.Count == 0) faults.AddRange(Parted(draft, places));
        return (places, faults);
    }

    private static (DraftPlace? Place, Refusal? Fault) PlaceOf(PlanDraft draft, SwapEntryJson swap)
    {
        var picture = draft.Picture;
        if (swap.Chain is not { } chain || !picture.Faces.TryGetValue(chain, out var face))
            return (null, new("chain",
                $"'{swap.Chain}' is not to be planned: its limit is not near within the horizon, or its shutdown has begun."));
        var before = draft.PlaceOf(chain);
        if (swap.Shutdown is { } id && picture.Input.Windows.All(w => w.Id != id || w.Line != face.Row.Line))
            return (null, new("shutdown", $"No shutdown '{id}' of line {face.Row.Line} is planned within the horizon."));
        if (draft.WhyTooLate(chain, swap.Shutdown) is { } late) return (null, new("shutdown", late));
        if (PlacingOf(swap.Placing) is not { } placing)
            return (null, new("placing", $"One of {string.Join(", ", Enum.GetValues<SwapPlacing>().Select(FileWords.Of))}."));
        if (before.Placing == SwapPlacing.Locked && placing == SwapPlacing.Locked && before.WindowId != swap.Shutdown)
            return (null, new("shutdown", $"'{chain}' is locked where it stands: tell it as by_hand to move it."));
        return swap.Note?.Length > LongestNote
            ? (null, new("note", $"At most {LongestNote} characters."))
            : (new DraftPlace(swap.Shutdown, placing, swap.Note?.Trim() ?? before.Note), null);
    }

    /// <summary>What is told without saying how firmly it stands, a person has placed.</summary>
    private static SwapPlacing? PlacingOf(string? word) => word is null
        ? SwapPlacing.ByHand
        : Enum.GetValues<SwapPlacing>().Select(p => (SwapPlacing?)p).FirstOrDefault(p => FileWords.Of(p!.Value) == word);

    /// <summary>Chains that are swapped together must stand in one shutdown.</summary>
    private static IEnumerable<Refusal> Parted(PlanDraft draft, Dictionary<string, DraftPlace> places) =>
        from together in places.Keys.Select(draft.Board.Together).DistinctBy(t => t[0])
        where together.Select(c => (places.GetValueOrDefault(c) ?? draft.PlaceOf(c)).WindowId).Distinct().Count() > 1
        select new Refusal("swaps", $"{string.Join(", ", together)} are swapped together: name all of them, with one shutdown.");
}
