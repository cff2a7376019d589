namespace WearWatch.Browser.Tests.Floor;

/// <summary>
/// A dashboard in which nothing happens but what its tests do, for tests that say that a forecast has not moved: in the shared
/// one another test trains the fleet model, and the next review moves them all.
/// </summary>
public sealed class StillPlant : IAsyncDisposable
{
    public StillPlant() => Address = Host.Listen();

    public DashboardHost Host { get; } = new() { StandsStill = true };

    public string Address { get; }

    public ValueTask DisposeAsync() => Host.DisposeAsync();
}
