using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.People;

/// <summary>
/// Keeps the keys that protect cookies and forms in the plant's memory: they outlive the process, and all dashboards share them.
/// </summary>
public sealed class SharedKeyDesk(IDbContextFactory<WearDb> database)
{
    /// <summary>All keys as XML, the oldest first.</summary>
    public IReadOnlyList<string> All()
    {
        using var db = database.CreateDbContext();
        return [.. db.SharedKeys.AsNoTracking().OrderBy(k => k.Id).Select(k => k.Xml)];
    }

    /// <summary>Keeps one more.</summary>
    public void Keep(string name, string xml)
    {
        using var db = database.CreateDbContext();
        db.SharedKeys.Add(new SharedKeyRow { Name = name, Xml = xml });
        db.SaveChanges();
    }
}
