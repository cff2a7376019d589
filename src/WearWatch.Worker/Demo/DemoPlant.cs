using WearWatch.Worker.Intake;

namespace WearWatch.Worker.Demo;

/// <summary>The simulated mill, for whoever wants to look around without a plant.</summary>
public sealed class DemoPlant
{
    /// <summary>Loads the mill: its register, three years of readings and events up to now. Loading it again changes nothing.</summary>
    public Task<ImportReport> LoadAsync(IProgress<ImportProgress>? progress = null, CancellationToken ct = default) => throw new NotImplementedException();
}
