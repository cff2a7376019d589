using WearWatch.Plant.Intake;

namespace WearWatch.Dashboard.Tests;

/// <summary>The dashboard of the small plant, for all tests of a class that only look at it.</summary>
public sealed class SmallPlantHost : IAsyncLifetime
{
    public DashboardHost Host { get; } = new();

    public async ValueTask InitializeAsync()
    {
        using var client = Host.CreateClient(); // starts the host, which opens the database
        await Host.Get<FileImport>().ImportAsync(SmallPlant.Files, null, TestContext.Current.CancellationToken);
    }

    public ValueTask DisposeAsync() => Host.DisposeAsync();
}
