using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Planning.Supply;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Settings;
using WearWatch.Plant.WorkOrders;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Planning;

/// <summary>Takes what became of the swaps of a shutdown: the new chain's life begins, and its parts leave the stock.</summary>
public sealed class AfterStopDesk(IDbContextFactory<WearDb> databases, IntakeDesk desk, TimeProvider clock)
{
    /// <summary>For so long a report can be taken back here.</summary>
    public static readonly TimeSpan UndoTime = TimeSpan.FromDays(14);

    private readonly SwapLengths lengths = new(desk);

    /// <summary>The planned swaps whose shutdown has begun, with their chains, for a person to say what became of them.</summary>
    public Task<IReadOnlyList<(SwapRow Swap, ChainRow Chain)>> BegunAsync(CancellationToken ct)
    {
        var now = clock.GetUtcNow();
        return AskAsync(db => db.PlannedSwaps.Where(s => s.Start <= now).OrderBy(s => s.Start), ct);
    }

    /// <summary>The swaps that were reported as done within the time to undo, the newest first.</summary>
    public Task<IReadOnlyList<(SwapRow Swap, ChainRow Chain)>> ReportedAsync(CancellationToken ct)
    {
        var since = clock.GetUtcNow() - UndoTime;
        return AskAsync(
            db => db.Swaps.Where(s => s.Outcome == SwapEnd.Done && s.OutcomeAt > since).OrderByDescending(s => s.OutcomeAt), ct);
    }

    /// <summary>What the swap of a chain takes from the stock.</summary>
    /// <param name="chain">The chain.</param>
    /// <param name="pitches">Pitches of the new chain; null for those of the old one.</param>
    /// <param name="withSprockets">Whether the sprockets go with it.</param>
    public static IReadOnlyList<PartNeed> PartsOf(ChainRow chain, int? pitches, bool withSprockets)
    {
        var type = PlanQuery.TypeOf(chain);
        return
        [
            .. PartNeed.Of(chain.Family.CutFor(pitches ?? PlanQuery.PitchesOf(chain), chain.HoldsLoad), type),
            .. withSprockets ? PlanQuery.SprocketsOf(chain, type) : [],
        ];
    }

    /// <summary>
    /// The swap was done: a new chain runs. Its life and its forecast follow from the event, and from the lengths that were
    /// measured. Nothing is kept of a report of which a part is refused. A length that is asked about waits, with its question in
    /// the answer; the rest is taken.
    /// </summary>
    public async Task<IntakeAnswer> DoneAsync(long swapId, SwapDone told, string by, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        var swap = await db.Swaps.SingleAsync(s => s.Id == swapId, ct);
        var chain = await db.Chains.SingleAsync(c => c.Id == swap.ChainId, ct);
        var isNew = swap.Outcome != SwapEnd.Done;
        if (isNew && WhenDoubt(swap, told, clock.GetUtcNow()) is { } when) return new IntakeAnswer.Refused([when]);
        var old = isNew ? await lengths.OldAsync(chain.Name, told, SwapReport.KeyOf(swap), by, ct) : null;
        if (old is IntakeAnswer.Refused) return old;
        var answer = await desk.TakeEventAsync(Replaced(chain, swap, told, by), ct);
        if (answer is IntakeAnswer.Taken && told.WithSprockets)
            answer = await desk.TakeEventAsync(NewSprockets(chain, swap, told, by), ct);
        if (!isNew) return answer; // told again: the same, or with other facts, which the report that stands refuses
        var fresh = answer is IntakeAnswer.Taken
            ? await lengths.NewAsync(chain.Name, told, SwapReport.KeyOf(swap), by, ct)
            : null;
        if (fresh is IntakeAnswer.Refused) answer = fresh;
        await db.Entry(swap).ReloadAsync(ct);
        if (swap.Outcome == SwapEnd.Done) return answer; // reported by another at the same time
        if (answer is not IntakeAnswer.Taken)
        {
            await TakeBackAsync(db, swap, by, "The report of the swap was not taken.", ct);
            swap.Undone++; // what is reported next has keys of its own
            await db.SaveChangesAsync(ct);
            return answer;
        }

        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        await db.Entry(swap).ReloadAsync(ct);
        if (swap.Outcome == SwapEnd.Done) return answer; // by another just now, who has taken the parts
        if (told.FromStock)
        {
            swap.PartsTaken = await SwapStock.TakeAsync(
                db, told.Material ?? PartsOf(chain, told.NewPitches, told.WithSprockets), ct);
        }

        (swap.HoursWorked, swap.DoneBy) = (told.HoursWorked, told.DoneBy.Length > 0 ? told.DoneBy : by);
        await EndAsync(db, swap, SwapEnd.Done, told.Note, by, ct);
        await transaction.CommitAsync(ct);
        return old as IntakeAnswer.Waiting ?? fresh as IntakeAnswer.Waiting ?? answer;
    }

    /// <summary>The swap was not done; the chain comes back into the next plan.</summary>
    public async Task NotDoneAsync(long swapId, string why, string by, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        await EndAsync(db, await db.Swaps.SingleAsync(s => s.Id == swapId, ct), SwapEnd.NotDone, why, by, ct);
    }

    /// <summary>
    /// Takes a report back: the old chain runs on, the new one's parts lie in the stock again, and the swap is to be reported.
    /// </summary>
    /// <returns>Why that cannot be done; null when it is.</returns>
    public async Task<Phrase?> UndoAsync(long swapId, string by, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        var swap = await db.Swaps.SingleAsync(s => s.Id == swapId, ct);
        if (swap.Outcome != SwapEnd.Done) return $"It is not reported as done.";
        if (await db.Swaps.AnyAsync(s => s.ChainId == swap.ChainId && s.Outcome == SwapEnd.Planned, ct))
            return $"The next swap of this chain is planned already. Take it out of the plan first.";
        await TakeBackAsync(db, swap, by, "The report of the swap was taken back.", ct);
        await SwapStock.PutBackAsync(db, swap.PartsTaken, ct);
        (swap.Outcome, swap.OutcomeNote, swap.OutcomeBy, swap.OutcomeAt) = (SwapEnd.Planned, "", "", null);
        (swap.PartsTaken, swap.Undone, swap.HoursWorked, swap.DoneBy) = ([], swap.Undone + 1, null, "");
        await db.SaveChangesAsync(ct);
        return null;
    }

    /// <summary>A swap is reported in its stop: before it the date has slipped, or it was done without waiting for it.</summary>
    private static Refusal? WhenDoubt(SwapRow swap, SwapDone told, DateTimeOffset now) =>
        !told.Confirmed && swap.Start is { } start && start <= now && told.At < start - WorkOrderConflict.BeforeTheStop
            ? new Refusal(Refusal.ToBeConfirmed, $"The stop began on {start:yyyy-MM-dd}. Was it done on {told.At:yyyy-MM-dd}?")
            : null;

    /// <summary>Takes the events and the lengths of a report out of use.</summary>
    private async Task TakeBackAsync(WearDb db, SwapRow swap, string by, string why, CancellationToken ct)
    {
        string[] keys = [SwapReport.KeyOf(swap), SwapReport.SprocketKeyOf(swap)];
        foreach (var id in await db.Events.Where(e => e.KeyOwner == KeyOwner.Program && keys.Contains(e.Key))
            .Select(e => e.Id).ToListAsync(ct))
            await desk.WithdrawEventAsync(id, by, why, ct);
        await lengths.WithdrawAsync(db, SwapReport.KeyOf(swap), by, why, ct);
    }

    private static NewEvent Replaced(ChainRow chain, SwapRow swap, SwapDone told, string by) => new()
    {
        Key = SwapReport.KeyOf(swap),
        KeyOwner = KeyOwner.Program,
        Told = new ChainEvent
        {
            Chain = chain.Name,
            Kind = ChainEventKind.Replacement,
            At = told.At,
            CounterBefore = RowFields.Hours(told.CounterH),
            CounterAfter = RowFields.Hours(told.CounterH),
            Lot = told.Lot,
            Broke = told.Broke,
            NewPitches = told.NewPitches,
            TakeUpMm = told.TakeUpMm,
            Note = told.Note,
        },
        Confirmed = true,
        ToldBy = by, // it was planned for this chain
    };

    private static NewEvent NewSprockets(ChainRow chain, SwapRow swap, SwapDone told, string by) => new()
    {
        Key = SwapReport.SprocketKeyOf(swap),
        KeyOwner = KeyOwner.Program,
        Told = new ChainEvent { Chain = chain.Name, Kind = ChainEventKind.SprocketReplaced, At = told.At },
        ToldBy = by,
    };

    private async Task<IReadOnlyList<(SwapRow Swap, ChainRow Chain)>> AskAsync(
        Func<WearDb, IQueryable<SwapRow>> which, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        var swaps = await which(db).AsNoTracking().ToListAsync(ct);
        var ids = swaps.Select(s => s.ChainId).ToArray();
        var chains = await db.Chains.AsNoTracking().Where(c => ids.Contains(c.Id)).ToDictionaryAsync(c => c.Id, ct);
        return [.. swaps.Select(s => (s, chains[s.ChainId]))];
    }

    private async Task EndAsync(WearDb db, SwapRow swap, SwapEnd outcome, string note, string by, CancellationToken ct)
    {
        (swap.Outcome, swap.OutcomeNote, swap.OutcomeBy, swap.OutcomeAt) = (outcome, note, by, clock.GetUtcNow());
        await db.SaveChangesAsync(ct);
    }
}
