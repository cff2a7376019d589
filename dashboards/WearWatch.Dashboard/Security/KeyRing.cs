using System.Xml.Linq;
using Microsoft.AspNetCore.DataProtection.KeyManagement;
using Microsoft.AspNetCore.DataProtection.Repositories;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Options;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Security;

/// <summary>
/// Keeps the keys that protect cookies and forms in the plant's memory: they outlive the process, and all dashboards share them.
/// </summary>
public sealed class KeyRing(IDbContextFactory<WearDb> database) : IXmlRepository, IConfigureOptions<KeyManagementOptions>
{
    public void Configure(KeyManagementOptions options) => options.XmlRepository = this;

    public IReadOnlyCollection<XElement> GetAllElements()
    {
        using var db = database.CreateDbContext();
        return [.. db.SharedKeys.AsNoTracking().OrderBy(k => k.Id).Select(k => k.Xml).AsEnumerable().Select(XElement.Parse)];
    }

    public void StoreElement(XElement element, string friendlyName)
    {
        using var db = database.CreateDbContext();
        db.SharedKeys.Add(new SharedKeyRow { Name = friendlyName, Xml = element.ToString(SaveOptions.DisableFormatting) });
        db.SaveChanges();
    }
}
