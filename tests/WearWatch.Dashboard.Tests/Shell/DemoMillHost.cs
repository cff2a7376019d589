using Microsoft.EntityFrameworkCore;
using WearWatch.Chains.Families;
using WearWatch.Lifting.Examinations;
using WearWatch.Storage;
using WearWatch.Storage.Rows;
using WearWatch.Worker.Demo;

namespace WearWatch.Dashboard.Tests.Shell;

/// <summary>
/// The real dashboard with the demo mill loaded, one person and one photo: something for every address to show.
/// </summary>
public sealed class DemoMillHost : IAsyncLifetime
{
    private readonly DashboardHost host = new();

    public HttpClient Client { get; private set; } = null!;

    /// <summary>
    /// A value for each parameter that an address of ours may have, by its name and, where it has one, its type.
    /// </summary>
    public IReadOnlyDictionary<string, string> Samples { get; private set; } = null!;

    public T Get<T>()
        where T : notnull => host.Get<T>();

    /// <summary>Its memory.</summary>
    public Task<WearDb> OpenAsync() => host.OpenAsync();

    public async ValueTask InitializeAsync()
    {
        Client = host.CreateClient();
        await host.Get<DemoPlant>().LoadAsync();
        await using var db = await host.OpenAsync();
        var chain = await db.Readings.Select(r => r.ChainId).Distinct().Join(db.Chains, id => id, c => c.Id, (_, c) => c)
            .OrderBy(c => c.Id).FirstAsync();
        var photo = new PhotoRow
        {
            ChainId = chain.Id,
            Key = "photo",
            LookKey = "look",
            Point = InspectionPoint.CrackedOrTurnedParts,
            Jpeg = [0xff, 0xd8, 0xff, 0xd9],
        };
        var lifting = await db.LiftingStates.Where(s => s.Standing == LiftingStanding.Quarantined)
            .Join(db.Chains, s => s.ChainId, c => c.Id, (_, c) => c)
            .OrderBy(c => c.Id)
            .FirstAsync();
        var paper = new LiftingFileRow
        {
            ChainId = lifting.Id,
            Key = "scan",
            Name = "scan.pdf",
            ContentType = "application/pdf",
            Content = [.. "%PDF-1.7 %%EOF"u8],
            ToldBy = "Ina",
        };
        db.Photos.Add(photo);
        db.LiftingFiles.Add(paper);
        await db.SaveChangesAsync();
        Samples = new Dictionary<string, string>
        {
            ["chain"] = chain.Name,
            ["chain of links"] = (await db.Chains.ToListAsync()).First(c => c.Family.Name == "round_link").Name,
            ["chain:int"] = $"{chain.Id}",
            ["name"] = chain.Name,
            ["line"] = chain.Line,
            ["mark"] = "ABC123",
            ["table"] = "readings",
            ["code"] = "de",
            ["designation"] = "16B-1",
            ["id:int"] = "1",
            ["id:long"] = $"{photo.Id}",
            ["lifting"] = lifting.Name,
            ["paper:long"] = $"{paper.Id}",
        };
    }

    public ValueTask DisposeAsync() => host.DisposeAsync();
}
