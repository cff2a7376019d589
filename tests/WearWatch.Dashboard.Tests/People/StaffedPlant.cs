
using WearWatch.Plant.Intake;

namespace WearWatch.Dashboard.Tests.People;

/// <summary>The small plant with an administrator, a technician and one who only reads, each at a browser of their own.</summary>
public sealed class StaffedPlant : IAsyncLifetime
{
    public DashboardHost Host { get; } = new();

    public Caller Administrator { get; private set; } = null!;

    public Caller Technician { get; private set; } = null!;

    public Caller Reader { get; private set; } = null!;

    public async ValueTask InitializeAsync()
    {
        Administrator = new Caller(Host);
        await Administrator.SetUpAsync();
        Technician = await Administrator.AddAsync("Bea", 1);
        Reader = await Administrator.AddAsync("Rea", 0);
        await Host.Get<FileImport>().ImportAsync(SmallPlant.Files, null, TestContext.Current.CancellationToken);
    }

    public async ValueTask DisposeAsync()
    {
        foreach (var caller in new[] { Administrator, Technician, Reader }) caller.Dispose();
        await Host.DisposeAsync();
    }
}
