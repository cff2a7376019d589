using WearWatch.Plant.Planning;
using WearWatch.Worker.Tests.Planning;

namespace WearWatch.Dashboard.Tests.Planning;

/// <summary>The dashboard of the small mill of the planner's tests.</summary>
public sealed class PlannedHost : IAsyncDisposable
{
    private PlannedHost()
    {
    }

    public DashboardHost Host { get; } = new();

    public static async Task<PlannedHost> OpenAsync()
    {
        var mill = new PlannedHost();
        await using var db = await mill.Host.OpenAsync();
        var now = mill.Get<TimeProvider>().GetUtcNow();
        await MillRows.AddAsync(db, mill.Get<PlanInputs>(), now, TestContext.Current.CancellationToken);
        return mill;
    }

    public T Get<T>()
        where T : notnull => Host.Get<T>();

    /// <summary>Proposes a plan and keeps it, as the page does.</summary>
    public async Task KeepAProposalAsync()
    {
        var draft = new PlanDraft(await Get<PlanQuery>().AskAsync(TestContext.Current.CancellationToken));
        await draft.ProposeAsync(stop: TestContext.Current.CancellationToken);
        await Get<PlanKeeping>().KeepAsync(draft, "planner", TestContext.Current.CancellationToken);
    }

    public ValueTask DisposeAsync() => Host.DisposeAsync();
}
