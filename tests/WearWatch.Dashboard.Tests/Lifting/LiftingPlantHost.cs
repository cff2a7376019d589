using WearWatch.Chains.Families;
using WearWatch.Lifting.Examinations;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Lifting;

namespace WearWatch.Dashboard.Tests.Lifting;

/// <summary>The real dashboard of a plant that has nothing but chains that lift; a crack is found at one of each kind.</summary>
public sealed class LiftingPlantHost : IAsyncLifetime
{
    private readonly DashboardHost host = new();

    public HttpClient Client { get; private set; } = null!;

    /// <summary>The chains' numbers by their names.</summary>
    public IReadOnlyDictionary<string, int> Ids { get; private set; } = null!;

    /// <summary>Where the plant keeps its data.</summary>
    public string DataFolder => host.DataFolder;

    public T Get<T>()
        where T : notnull => host.Get<T>();

    public async ValueTask InitializeAsync()
    {
        Client = host.CreateClient();
        var files = LiftingChains.Files(TimeProvider.System.GetUtcNow());
        var report = await host.Get<FileImport>().ImportAsync(files, null, default);
        await LiftingChains.ConfirmAsync(report, await host.OpenAsync(), host.Get<IntakeDesk>());
        foreach (var name in LiftingChains.Found)
        {
            var look = new NewInspection(
                $"look-{name}", name, null, null, [new(InspectionPoint.CrackedOrTurnedParts, Found: true)], "Ina");
            Assert.IsType<IntakeAnswer.Taken>(await host.Get<InspectionDesk>().TakeAsync(look, default));
        }

        foreach (var name in LiftingChains.Stopped)
        {
            var step = new NewLiftingStep($"stop-{name}", name, LiftingStepKind.Quarantined, "Ina", "the hook is bent", []);
            Assert.IsType<IntakeAnswer.Taken>(await host.Get<LiftingUseDesk>().TakeAsync(step, default));
        }

        await using var db = await host.OpenAsync();
        Ids = db.Chains.ToDictionary(c => c.Name, c => c.Id);
    }

    public ValueTask DisposeAsync() => host.DisposeAsync();
}
