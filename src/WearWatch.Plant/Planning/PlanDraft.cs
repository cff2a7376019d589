using System.Collections.Immutable;
using WearWatch.Planning.Plans;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Planning;

/// <summary>
/// A plan on the board that nobody has kept yet: moved, locked, annotated and undone without touching the real one.
/// </summary>
public sealed class PlanDraft
{
    private static readonly PlannerEffort Effort = PlannerEffort.Usual;

    private readonly ImmutableDictionary<string, DraftPlace> start;
    private readonly Stack<ImmutableDictionary<string, DraftPlace>> before = [];
    private ImmutableDictionary<string, DraftPlace> places;

    /// <summary>Starts from the saved plan.</summary>
    public PlanDraft(PlanPicture picture)
    {
        Picture = picture;
        Board = new SwapCosting(picture.Input);
        var windows = picture.Input.Windows.Select(w => w.Id).ToHashSet();
        TooLate = [.. picture.Swaps
            .Where(s => Board.IsTooLate(s.Key, s.Value.WindowId) || s.Value.Start > Board.OutOfUseBy(s.Key))
            .Select(s => s.Key).Order(StringComparer.Ordinal)];
        start = picture.Swaps
            .ToImmutableDictionary(s => s.Key, s => new DraftPlace(s.Value.WindowId, s.Value.Placing, s.Value.Note));
        Homeless = [.. start.Where(p => p.Value.WindowId is { } id && !windows.Contains(id)).Select(p => p.Key)
            .Except(TooLate).Order(StringComparer.Ordinal)];
        places = start.SetItems(Homeless.Concat(TooLate).Select(c =>
            KeyValuePair.Create(c, DraftPlace.Nowhere with { Note = start[c].Note })));
        AsItIs = Plan = Board.Count(Windows);
        ByDueDate = SwapPlanner.ByEarliestDueDate(picture.Input);
    }

    /// <summary>What the plan is made from.</summary>
    public PlanPicture Picture { get; }

    /// <summary>Chains whose swap stood in a shutdown that is no longer planned; they have to be placed anew.</summary>
    public IReadOnlyList<string> Homeless { get; }

    /// <summary>
    /// Chains that hold a load and whose swap stood in a shutdown after their hard date; they have to be placed anew.
    /// </summary>
    public IReadOnlyList<string> TooLate { get; }

    /// <summary>Counts what places cost, under the circumstances that are supposed.</summary>
    public SwapCosting Board { get; private set; }

    /// <summary>The draft as it stands now.</summary>
    public SwapPlan Plan { get; private set; }

    /// <summary>The saved plan.</summary>
    public SwapPlan AsItIs { get; private set; }

    /// <summary>The plan that goes by the earliest due date.</summary>
    public SwapPlan ByDueDate { get; private set; }

    /// <summary>What if, or null for the real shutdowns, crews and deliveries.</summary>
    public WhatIf? WhatIf { get; private set; }

    /// <summary>The proof that came with the last proposal, until something is moved.</summary>
    public SwapPlan? Proposal { get; private set; }

    /// <summary>Whether there is a step to take back.</summary>
    public bool CanUndo => before.Count > 0;

    /// <summary>Whether it differs from the saved plan.</summary>
    public bool IsChanged =>
        !places.OrderBy(p => p.Key, StringComparer.Ordinal).SequenceEqual(start.OrderBy(p => p.Key, StringComparer.Ordinal));

    /// <summary>The window's id of each chain that was placed; null for not in the horizon.</summary>
    public IReadOnlyDictionary<string, string?> Windows => places.ToDictionary(p => p.Key, p => p.Value.WindowId);

    /// <summary>Where a chain's swap stands.</summary>
    public DraftPlace PlaceOf(string chain) => places.GetValueOrDefault(chain, DraftPlace.Nowhere);

    /// <summary>The input for the planner: what a person placed stays, and what stands in a shutdown that is frozen.</summary>
    private PlanInput ToPropose()
    {
        var frozen = Board.Input.Windows.Where(w => w.Start < Board.Input.FrozenUntil).Select(w => w.Id).ToHashSet();
        return Board.Input with
        {
            Kept = places.Where(p => p.Value.IsKept || (p.Value.WindowId is { } id && frozen.Contains(id)))
                .ToDictionary(p => p.Key, p => p.Value.WindowId),
        };
    }

    /// <summary>Moves a swap by hand, and those that go with it.</summary>
    /// <returns>Why it stays where it is, in a sentence; null when it was moved.</returns>
    public Phrase? Move(string chain, string? windowId)
    {
        var together = Board.Together(chain);
        if (together.Any(c => PlaceOf(c).Placing == SwapPlacing.Locked)) return $"{chain} stays: it is locked.";
        if (together.All(c => PlaceOf(c).WindowId == windowId)) return $"{chain} is there already.";
        if (WhyTooLate(chain, windowId) is { } late) return late;
        Change(p => p.SetItems(
            together.Select(c => KeyValuePair.Create(c, PlaceOf(c) with { WindowId = windowId, Placing = SwapPlacing.ByHand }))));
        return null;
    }

    /// <summary>Says how firmly a swap and those that go with it stand.</summary>
    /// <returns>Why that is refused, in a sentence; null when it is done.</returns>
    public Phrase? Hold(string chain, SwapPlacing placing)
    {
        if (WhyTooLate(chain, PlaceOf(chain).WindowId) is { } late) return late;
        Change(p => p.SetItems(Board.Together(chain).Select(c => KeyValuePair.Create(c, PlaceOf(c) with { Placing = placing }))));
        return null;
    }

    /// <summary>Why a chain that holds a load cannot stand in a shutdown, and what to do; null when it can.</summary>
    public Phrase? WhyTooLate(string chain, string? windowId) => Board.IsTooLate(chain, windowId)
        ? HardDateWords.TooLate(chain, Board.OutOfUseBy(chain)!.Value, Picture.Time)
        : null;

    /// <summary>Writes a note on the decision.</summary>
    public void Annotate(string chain, string note) => Change(p => p.SetItem(chain, PlaceOf(chain) with { Note = note.Trim() }));

    /// <summary>Puts swaps where they are told, as one step.</summary>
    public void Place(IEnumerable<KeyValuePair<string, DraftPlace>> told) => Change(p => p.SetItems(told));

    /// <summary>Lets the planner propose where the swaps go that no person has placed, and takes what it proposes.</summary>
    /// <param name="progress">Hears how far it is.</param>
    /// <param name="stop">Ends the search; the draft stays as it was.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public async Task ProposeAsync(IProgress<PlanStage>? progress = null, CancellationToken stop = default) =>
        Take(await SwapPlanner.ProposeAsync(ToPropose(), Effort, progress, stop));

    private void Take(SwapPlan proposal)
    {
        Change(p => p.SetItems(proposal.Placements.Where(x => !PlaceOf(x.Chain).IsKept)
            .Select(x => KeyValuePair.Create(
                x.Chain, PlaceOf(x.Chain) with { WindowId = x.Window?.Id, Placing = SwapPlacing.Proposed }))));
        Proposal = proposal;
    }

    /// <summary>Takes the last step back.</summary>
    public void Undo()
    {
        if (before.TryPop(out var last)) Show(last);
    }

    /// <summary>Looks at the same draft under other circumstances; null goes back to the real ones.</summary>
    public void Suppose(WhatIf? whatIf)
    {
        WhatIf = whatIf;
        Board = new SwapCosting(whatIf?.Apply(Picture.Input) ?? Picture.Input);
        AsItIs = Board.Count(start.ToDictionary(p => p.Key, p => p.Value.WindowId));
        ByDueDate = SwapPlanner.ByEarliestDueDate(Board.Input);
        Show(places);
    }

    private void Change(Func<ImmutableDictionary<string, DraftPlace>, ImmutableDictionary<string, DraftPlace>> how)
    {
        before.Push(places);
        Show(how(places));
    }

    private void Show(ImmutableDictionary<string, DraftPlace> now)
    {
        // What was moved while supposing need not keep the real dates.
        places = WhatIf is not null ? now : now.SetItems(now.Where(p => Board.IsTooLate(p.Key, p.Value.WindowId))
            .Select(p => KeyValuePair.Create(p.Key, DraftPlace.Nowhere with { Note = p.Value.Note })));
        Proposal = null;
        Plan = Board.Count(Windows);
    }
}
