namespace WearWatch.Browser.Tests;

/// <summary>
/// A dashboard of its own with the 3,000 chains of <see cref="SeededMill"/>, started when the first test asks for it: in the one
/// of <see cref="Screen"/> every other test would draw and carry them too.
/// </summary>
public sealed class BigMill : IAsyncDisposable
{
    private readonly Lazy<Task<string>> opened;

    public BigMill() => opened = new(StartAsync);

    public DashboardHost Host { get; } = new() { StandsStill = true };

    /// <summary>Its address, once all chains are there.</summary>
    public Task<string> OpenAsync() => opened.Value;

    public ValueTask DisposeAsync() => Host.DisposeAsync();

    private async Task<string> StartAsync()
    {
        var address = Host.Listen();
        await SeededMill.FillAsync(Host.Services, 3000);
        return address;
    }
}
