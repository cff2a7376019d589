using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Plant.Settings;
using WearWatch.Plant.Tracking;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Register;

/// <summary>The one way in for a card that a person writes; who changed what, when and why is kept for ever.</summary>
/// <remarks>Each call is one write transaction, committed to disk before it answers; the chain is assessed after that.</remarks>
public sealed class RegisterDesk(IDbContextFactory<WearDb> database, ChainReview review, TimeProvider clock)
{
    private const int ChangesTold = 20;

    /// <summary>Takes a chain into the register.</summary>
    /// <param name="card">The card.</param>
    /// <param name="by">Who.</param>
    /// <param name="why">Why, in a few words, or empty.</param>
    /// <param name="isPlanner">Whether a planner does: only one says that a chain of a kind that lifts does not.</param>
    /// <param name="ct">Gives up before the commit.</param>
    public async Task<RegisterAnswer> AddAsync(
        ChainCard card, string by, string why = "", bool isPlanner = false, CancellationToken ct = default)
    {
        var now = clock.GetUtcNow();
        if (Faults(CardCheck.NameFaults(card.Name), CardCheck.Faults(card, now), CardCheck.TurnedOffFaults(null, card, isPlanner),
            CardCheck.WordFaults(by, why, needsWhy: false)) is { } no) return no;
        await using var db = await database.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        if (await db.Chains.AsNoTracking().SingleOrDefaultAsync(c => c.Name == card.Name, ct) is { } known)
        {
            return CardChanges.Between(known.ToCard(), card).Any()
                ? new RegisterAnswer.Refused([new Refusal("chain", $"A chain of this name is in the register already.")])
                : new RegisterAnswer.Kept(known.Id, known.Revision, []);
        }

        var row = new ChainRow { Name = card.Name };
        row.Take(card);
        db.Chains.Add(row);
        await db.SaveChangesAsync(ct);
        return await KeepAsync(db, transaction, row, CardChanges.Of(row.Id, null, card, by.Trim(), why.Trim(), now), ct);
    }

    /// <summary>Changes a chain's card.</summary>
    /// <param name="card">The card as it should be; the name tells which.</param>
    /// <param name="revision">
    /// The state of the card from which the person set out: what another one changed since is not overwritten.
    /// </param>
    /// <param name="by">Who.</param>
    /// <param name="why">Why, in a few words.</param>
    /// <param name="isPlanner">Whether a planner does: only one says that a chain that lifts does so no more.</param>
    /// <param name="ct">Gives up before the commit.</param>
    public async Task<RegisterAnswer> ChangeAsync(
        ChainCard card, int revision, string by, string why, bool isPlanner = false, CancellationToken ct = default)
    {
        var now = clock.GetUtcNow();
        await using var db = await database.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        if (await db.Chains.SingleOrDefaultAsync(c => c.Name == card.Name, ct) is not { } row)
            return new RegisterAnswer.Refused([new Refusal("chain", $"There is no chain '{card.Name}' in the register.")]);
        var before = row.ToCard();
        // The same card sent twice, or one without a change, is no quarrel.
        if (!CardChanges.Between(before, card).Any()) return new RegisterAnswer.Kept(row.Id, row.Revision, []);
        if (row.Revision != revision) return new RegisterAnswer.Overtaken(row, await NewestAsync(db, row.Id, ct));
        if (Faults(CardCheck.Faults(card, now), CardCheck.TurnedOffFaults(before, card, isPlanner),
            CardCheck.WordFaults(by, why, needsWhy: true)) is { } no) return no;
        row.Take(card);
        return await KeepAsync(db, transaction, row, CardChanges.Of(row.Id, before, card, by.Trim(), why.Trim(), now), ct);
    }

    private async Task<RegisterAnswer> KeepAsync(
        WearDb db, Microsoft.EntityFrameworkCore.Storage.IDbContextTransaction transaction, ChainRow row,
        IReadOnlyList<CardChangeRow> changes,
        CancellationToken ct)
    {
        db.CardChanges.AddRange(changes);
        await review.CommitAsync(db, transaction, row.Id, ct);
        return new RegisterAnswer.Kept(row.Id, row.Revision, changes);
    }

    private static async Task<IReadOnlyList<CardChangeRow>> NewestAsync(WearDb db, int chainId, CancellationToken ct)
    {
        var last = await db.CardChanges.AsNoTracking().Where(c => c.ChainId == chainId).OrderByDescending(c => c.Id)
            .Take(ChangesTold).ToListAsync(ct);
        return [.. last.TakeWhile(c => c.At == last[0].At && c.By == last[0].By)];
    }

    private static RegisterAnswer.Refused? Faults(params IEnumerable<Refusal>[] checks) =>
        checks.SelectMany(c => c).ToList() is { Count: > 0 } faults ? new RegisterAnswer.Refused(faults) : null;
}
