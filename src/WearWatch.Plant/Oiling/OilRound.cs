using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Lubrication;
using WearWatch.Plant.Intake;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Oiling;

/// <summary>
/// What a person does on a round with the oil can: says of chains that they are done, and takes a mistaken tap back.
/// </summary>
public sealed class OilRound(IDbContextFactory<WearDb> database, IntakeDesk desk, TimeProvider clock)
{
    /// <summary>Records that chains were oiled now, or their oilers looked at where that is what is due.</summary>
    /// <remarks>
    /// Method and grade are the card's, else the tables'. Each chain is an event of its own with a key made of the round's: the
    /// same round told twice is stored once.
    /// </remarks>
    /// <param name="chainIds">The chains.</param>
    /// <param name="round">A key for this tap.</param>
    /// <param name="by">Who did it.</param>
    /// <param name="ct">Stops between two chains.</param>
    /// <returns>The events that stand now, for <see cref="UndoAsync"/>.</returns>
    public async Task<IReadOnlyList<long>> DoneAsync(
        IReadOnlyCollection<int> chainIds, string round, string by, CancellationToken ct = default)
    {
        var now = clock.GetUtcNow();
        await using var db = await database.CreateDbContextAsync(ct);
        var chains = await db.Chains.AsNoTracking().Where(c => EF.Parameter(chainIds).Contains(c.Id)).OrderBy(c => c.Id)
            .ToListAsync(ct);
        var events = new List<long>();
        foreach (var chain in chains)
        {
            ct.ThrowIfCancellationRequested();
            if (await desk.TakeEventAsync(Event(chain, round, by, now), CancellationToken.None) is IntakeAnswer.Taken taken)
                events.Add(taken.Id);
        }

        return events;
    }

    /// <summary>Withdraws what was recorded; nothing is deleted.</summary>
    public async Task UndoAsync(IReadOnlyCollection<long> events, string by, CancellationToken ct = default)
    {
        foreach (var id in events) await desk.WithdrawEventAsync(id, by, "tapped by mistake", ct);
    }

    private static NewEvent Event(ChainRow chain, string round, string by, DateTimeOffset now)
    {
        var card = chain.ToCard();
        var looked = card.Duty.Lubrication == LubricationState.Auto;
        return new NewEvent
        {
            Key = $"{round}:{chain.Id}",
            Told = new ChainEvent
            {
                Chain = chain.Name,
                Kind = looked ? ChainEventKind.Inspection : ChainEventKind.Oiling,
                At = now,
                Oil = looked ? OilApplied.Untold : new OilApplied(card.OilMethod ?? OilMethod.Hand, GradeOf(card)),
            },
            ToldBy = by,
        };
    }

    /// <summary>The oil for a chain: the plant's own, else the tables'; empty where neither says.</summary>
    public static string GradeOf(ChainCard card) =>
        card.OilGrade.Length > 0 ? card.OilGrade : OilAdvice.For(card).Grade is { } grade ? grade.Name : "";
}
