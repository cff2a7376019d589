namespace WearWatch.Plant.Planning;

/// <summary>A board brought up to what others have decided since it was opened: nobody's decision is lost.</summary>
/// <param name="Draft">The board from the plan of now, with the moves that were made on the old one.</param>
/// <param name="Others">The chains on which somebody else has decided.</param>
/// <param name="Conflicts">Those of them that were moved here too, to another place: the decision that is kept stands.</param>
public sealed record PlanUpdate(PlanDraft Draft, IReadOnlyList<string> Others, IReadOnlyList<string> Conflicts)
{
    /// <summary>Brings a board up to date.</summary>
    /// <param name="mine">The board.</param>
    /// <param name="newer">The plan of now.</param>
    public static PlanUpdate Of(PlanDraft mine, PlanPicture newer)
    {
        var draft = new PlanDraft(newer);
        var chains = mine.Picture.Faces.Keys.Union(newer.Faces.Keys).Order(StringComparer.Ordinal).ToArray();
        string[] others = [.. chains.Where(c => KeptIn(newer, c) != KeptIn(mine.Picture, c))];
        string[] moved =
        [
            .. chains.Where(c => mine.PlaceOf(c) != KeptIn(mine.Picture, c) && newer.Faces.ContainsKey(c))
                .Except(mine.Homeless).Except(mine.TooLate),
        ];
        string[] conflicts = [.. moved.Intersect(others).Where(c => mine.PlaceOf(c).WindowId != KeptIn(newer, c).WindowId)];
        if (moved.Except(others).ToArray() is { Length: > 0 } own)
            draft.Place(own.Select(c => KeyValuePair.Create(c, mine.PlaceOf(c))));
        return new PlanUpdate(draft, others, conflicts);
    }

    private static DraftPlace KeptIn(PlanPicture picture, string chain) => picture.Swaps.GetValueOrDefault(chain) is { } swap
        ? new DraftPlace(swap.WindowId, swap.Placing, swap.Note)
        : DraftPlace.Nowhere;
}
