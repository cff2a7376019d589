using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Settings;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Rounds;

/// <summary>Asks for today's rounds, keeps who takes them and in which order the plant is walked.</summary>
public sealed class RoundDesk(
    IDbContextFactory<WearDb> databases, FloorQuery floor, PlantSettings settings, PlantClock clock, PlantNews news)
{
    /// <summary>Today's rounds.</summary>
    public async Task<RoundView> AskAsync(CancellationToken ct)
    {
        var time = await clock.NowAsync(ct);
        return RoundView.Of(await floor.AskAsync(ct), await settings.CalendarAsync(ct), time, await PersonsAsync(time.Today, ct));
    }

    /// <summary>Who has which line on a day.</summary>
    public async Task<IReadOnlyDictionary<string, string>> PersonsAsync(DateOnly day, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        var hands = await db.RoundHands.AsNoTracking().Where(h => h.Day == day).OrderBy(h => h.Id).ToListAsync(ct);
        return hands.GroupBy(h => h.Line).Select(there => there.Last()).Where(h => !h.GivenBack)
            .ToDictionary(h => h.Line, h => h.Person);
    }

    /// <summary>
    /// A person takes a line's round of a day, or gives it back; screens that show the line hear of it. Told again under the same
    /// key it changes nothing.
    /// </summary>
    /// <returns>Who has it then; null for nobody.</returns>
    public async Task<string?> HandAsync(
        string key, string line, DateOnly day, string person, bool givesBack, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        if (!await db.RoundHands.AnyAsync(h => h.Key == key, ct))
        {
            db.RoundHands.Add(new RoundHandRow
            {
                Key = key,
                Day = day,
                Line = line,
                Person = person,
                GivenBack = givesBack,
                At = (await clock.NowAsync(ct)).Now,
            });
            await db.SaveChangesAsync(ct);
            await transaction.CommitAsync(ct);
            news.Tell([.. (await floor.AskAsync(ct)).Where(c => c.Row.Line == line).Select(c => c.Row.Id)]);
        }

        return (await PersonsAsync(day, ct)).GetValueOrDefault(line);
    }

    /// <summary>Sets the order in which the plant is walked; chains that are left out follow by name.</summary>
    public async Task SetOrderAsync(IReadOnlyList<int> chainIds, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        var kept = await db.Walks.ToDictionaryAsync(w => w.ChainId, ct);
        foreach (var (place, id) in chainIds.Index())
        {
            if (kept.TryGetValue(id, out var walk)) walk.Place = place;
            else db.Walks.Add(new WalkRow { ChainId = id, Place = place });
        }

        await db.SaveChangesAsync(ct);
        await transaction.CommitAsync(ct);
    }
}
