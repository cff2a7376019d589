using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Settings;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Planning;

/// <summary>Keeps decisions on swaps.</summary>
public sealed class PlanKeeping(IDbContextFactory<WearDb> databases, PlantNews news, TimeProvider clock)
{
    /// <summary>
    /// Makes a draft the plan: each changed decision is a new row, and the one before keeps its place in the history.
    /// </summary>
    /// <returns>
    /// The draft with how many decisions were changed. Nothing is kept when somebody decided otherwise since it was begun, or
    /// when a chain that holds a load would stand past the hard date that it has by now.
    /// </returns>
    public async Task<PlanAnswer> KeepAsync(PlanDraft draft, string by, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        var standing = await db.Swaps.Where(s => s.Outcome == SwapEnd.Planned).ToDictionaryAsync(s => s.ChainId, ct);
        var windows = draft.Picture.Input.Windows.ToDictionary(w => w.Id);
        var (now, changed, fresh) = (clock.GetUtcNow(), 0, new List<SwapRow>());
        foreach (var (name, face) in draft.Picture.Faces)
        {
            var (place, old) = (draft.PlaceOf(name), standing.GetValueOrDefault(face.Row.Id));
            var isAsItWas = old is null
                ? place.IsNothing
                : (old.WindowId, old.Placing, old.Note) == (place.WindowId, place.Placing, place.Note);
            if (isAsItWas) continue;
            changed++;
            if (old is not null) (old.Outcome, old.OutcomeBy, old.OutcomeAt) = (SwapEnd.Replaced, by, now);
            if (place.IsNothing) continue;
            var window = place.WindowId is { } id ? windows[id] : null;
            fresh.Add(new SwapRow
            {
                ChainId = face.Row.Id,
                WindowId = place.WindowId,
                Start = window?.Start,
                End = window?.End,
                Placing = place.Placing,
                Note = place.Note,
                PlannedHours = draft.Board.Input.Tasks.Single(t => t.Chain == name).Hours,
                DecidedBy = by,
                DecidedAt = now,
            });
        }

        if (changed > 0 && await PlanQuery.RevisionAsync(db, ct) is var revision && revision != draft.Picture.Revision)
            return new PlanAnswer.Overtaken(revision);
        if (await TooLateAsync(db, draft, fresh, now, ct) is { Count: > 0 } late) return new PlanAnswer.Refused(late);
        await db.SaveChangesAsync(ct); // the old ones first: a chain has one planned swap at a time
        db.Swaps.AddRange(fresh);
        await db.SaveChangesAsync(ct);
        await transaction.CommitAsync(ct);
        if (changed > 0) news.Tell([.. draft.Picture.Faces.Values.Select(f => f.Row.Id)]);
        return new PlanAnswer.Planned(draft, changed);
    }

    /// <summary>Refuses what stands past a hard date by the forecasts of now, which may be newer than the draft.</summary>
    private static async Task<IReadOnlyList<Refusal>> TooLateAsync(
        WearDb db, PlanDraft draft, IReadOnlyList<SwapRow> fresh, DateTimeOffset now, CancellationToken ct)
    {
        var startOf = fresh.Where(s => s.Start is not null).ToDictionary(s => s.ChainId, s => s.Start!.Value);
        var ids = startOf.Keys.ToArray();
        var loads = await HeldLoads.ReadAsync(db, now, draft.Picture.Time.Zone, ct);
        var chains = await (from chain in db.Chains
                            join forecast in db.Forecasts.Where(f => f.IsLatest) on chain.Id equals forecast.ChainId
                            where ids.Contains(chain.Id)
                            orderby chain.Name
                            select new { chain, forecast }).AsNoTracking().ToListAsync(ct);
        return [.. from c in chains
                   let date = loads.HardDateOf(c.chain, c.forecast)
                   where startOf[c.chain.Id] > date
                   select new Refusal(
                       "swaps", HardDateWords.TooLate(c.chain.Name, date!.Value, draft.Picture.Time))];
    }
}
