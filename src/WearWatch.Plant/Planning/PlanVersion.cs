using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Planning;

/// <summary>A plan that was put aside under a name.</summary>
/// <param name="Row">What is kept of it.</param>
public sealed record PlanVersion(PlanVersionRow Row)
{
    /// <summary>Whether somebody has approved it.</summary>
    public bool IsApproved => Row.ApprovedAt is not null;

    /// <summary>
    /// Where it puts the swaps of a board of now: those of chains that are in it, in shutdowns that are still planned.
    /// </summary>
    public IReadOnlyDictionary<string, DraftPlace> PlacesOn(PlanDraft draft)
    {
        var windows = draft.Picture.Input.Windows.Select(w => w.Id).ToHashSet();
        return Row.Swaps
            .Where(s => draft.Picture.Faces.ContainsKey(s.Chain) && (s.WindowId is null || windows.Contains(s.WindowId)))
            .ToDictionary(s => s.Chain, s => draft.PlaceOf(s.Chain) with { WindowId = s.WindowId, Placing = s.Placing });
    }

    /// <summary>What a plan is as swaps of a version.</summary>
    public static IReadOnlyList<VersionSwap> SwapsOf(PlanDraft draft) =>
    [
        .. draft.Plan.Placements.Select(p => new VersionSwap(
            p.Chain, p.Window?.Id, p.Window?.Start, draft.PlaceOf(p.Chain).Placing,
            draft.Board.Input.Tasks.Single(t => t.Chain == p.Chain).Hours)),
    ];

    /// <summary>The swaps that stand elsewhere in another plan; one that a plan does not know stands nowhere in it.</summary>
    public static IReadOnlyList<VersionDifference> Between(IReadOnlyList<VersionSwap> from, IReadOnlyList<VersionSwap> to)
    {
        var (a, b) = (from.ToDictionary(s => s.Chain), to.ToDictionary(s => s.Chain));
        return
        [
            .. a.Keys.Union(b.Keys).Order(StringComparer.Ordinal)
                .Select(c => new VersionDifference(c, a.GetValueOrDefault(c)?.Start, b.GetValueOrDefault(c)?.Start))
                .Where(d => d.From != d.To),
        ];
    }
}

/// <summary>A swap that stands elsewhere in another plan.</summary>
/// <param name="Chain">The chain.</param>
/// <param name="From">When it is swapped in the one; null for not within its horizon.</param>
/// <param name="To">When in the other.</param>
public sealed record VersionDifference(string Chain, DateTimeOffset? From, DateTimeOffset? To);
