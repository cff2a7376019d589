using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.People;

/// <summary>Who came in, who was refused, and who changed what others may do. Lines are only added.</summary>
public sealed class SecurityLog(IDbContextFactory<WearDb> database, IOrigin origin, TimeProvider clock)
{
    /// <summary>How long a line is kept (common practice: longer than a year's audit looks back).</summary>
    public static TimeSpan Kept { get; } = TimeSpan.FromDays(2 * 365);

    private const int Longest = 200;

    /// <summary>Adds a line.</summary>
    /// <param name="kind">What happened.</param>
    /// <param name="about">To whom or what.</param>
    /// <param name="who">Who did it; whoever asks right now if not given.</param>
    /// <param name="ct">Gives up.</param>
    public async Task AddAsync(SecurityEventKind kind, string about = "", string? who = null, CancellationToken ct = default)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        db.SecurityEvents.Add(new SecurityEventRow
        {
            At = clock.GetUtcNow(),
            Kind = kind,
            Who = Short(who ?? origin.Who),
            About = Short(about),
            Address = origin.Address,
        });
        await db.SaveChangesAsync(ct);
    }

    /// <summary>Removes lines whose time is over.</summary>
    /// <returns>How many went.</returns>
    public async Task<int> ThinAsync(CancellationToken ct = default)
    {
        var before = clock.GetUtcNow() - Kept;
        await using var db = await database.CreateDbContextAsync(ct);
        return await db.SecurityEvents.Where(l => l.At < before).ExecuteDeleteAsync(ct);
    }

    private static string Short(string text) => text.Length <= Longest ? text : text[..Longest];
}
