using Microsoft.Extensions.DependencyInjection;
using WearWatch.Plant.People;
using WearWatch.Storage.Rows;

namespace WearWatch.Browser.Tests;

/// <summary>A plant that tells others of its notices: some chains on a line, one on none, administered by Ada.</summary>
internal static class NotifyingPlant
{
    public const string Password = "twelve links of chain";

    /// <summary>Fills a dashboard that listens.</summary>
    /// <param name="host">The dashboard.</param>
    /// <param name="prefix">What its chains are called by.</param>
    public static async Task FillAsync(DashboardHost host, string prefix)
    {
        await PlantFiles.TakeInAsync(host.Services, prefix);
        await using var db = host.Services.GetRequiredService<Storage.Engines.WearStore>().CreateDbContext();
        db.Chains.Add(new ChainRow { Name = "LOOSE", PitchMm = 25.4 });
        await db.SaveChangesAsync(TestContext.Current.CancellationToken);
        using var scope = host.Services.CreateScope();
        await scope.ServiceProvider.GetRequiredService<PeopleDesk>().AddFirstAsync("Ada", Password);
    }
}
