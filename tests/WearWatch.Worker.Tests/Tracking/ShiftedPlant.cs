using WearWatch.Plant.Tracking;

namespace WearWatch.Worker.Tests.Tracking;

/// <summary>
/// A plant that has calibrated itself on a world with other constants of wear than the defaults (tests/data/SOURCES.md).
/// </summary>
public sealed class ShiftedPlant : IAsyncLifetime
{
    public TestPlant Plant { get; private set; } = null!;

    public async ValueTask InitializeAsync()
    {
        Plant = await TestPlant.OpenAsync();
        await Plant.Import.ImportAsync(A.Folder(A.Data("wear", "shifted")), null, TestContext.Current.CancellationToken);
        Assert.True(await Plant.Get<Calibrations>().CalibrateAsync(TestContext.Current.CancellationToken));
    }

    public ValueTask DisposeAsync() => Plant.DisposeAsync();
}
