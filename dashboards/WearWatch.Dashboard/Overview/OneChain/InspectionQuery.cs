using Microsoft.EntityFrameworkCore;
using WearWatch.Chains.Families;
using WearWatch.Inspections;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Overview.OneChain;

/// <summary>A finding with its photos, for the screen.</summary>
public sealed record FoundLine(string Words, IReadOnlyList<long> Photos);

/// <summary>A look, for the screen.</summary>
public sealed record InspectionLine(DateTimeOffset TakenAt, string ToldBy, string Summary, IReadOnlyList<FoundLine> Found);

/// <summary>Asks for the looks at a chain.</summary>
public sealed class InspectionQuery(IDbContextFactory<WearDb> databases)
{
    private const int Shown = 6;

    /// <summary>The newest looks.</summary>
    public async Task<IReadOnlyList<InspectionLine>> AskAsync(int chainId, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        var card = (await db.Chains.AsNoTracking().SingleAsync(c => c.Id == chainId, ct)).ToCard();
        var looks = await db.Looks.AsNoTracking().Where(l => l.ChainId == chainId).OrderByDescending(l => l.TakenAt).Take(Shown)
            .ToListAsync(ct);
        var photos =
            (await db.Photos.Where(p => p.ChainId == chainId).Select(p => new { p.LookKey, p.Point, p.Id }).ToListAsync(ct))
            .ToLookup(p => (p.LookKey, p.Point), p => p.Id);
        return [.. looks.Select(look => new InspectionLine(
            look.TakenAt, look.ToldBy, Summary(look), [.. look.Findings.Where(f => f.Found).Select(f => new FoundLine(
            Words(f, card.Family.CheckPoint(f.Point, card.HoldsLoad)), [.. photos[(look.Key, f.Point)]]))]))];
    }

    private static string Summary(InspectionRow look) => look.Findings.Count(f => f.Found) switch
    {
        0 => T[$"{look.Findings.Count} points in order"],
        var found => T[$"{found} of {look.Findings.Count} points found"],
    };

    private static string Words(Finding finding, CheckPoint? point) =>
        (point is null ? finding.Point.ToString() : T[point.Ask]) + (finding.Note.Length > 0 ? $": {finding.Note}" : "");
}
