using WearWatch.Plant.Planning;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Worker.Tests.Planning;

/// <summary>A small mill with four chains on two lines and a shutdown of both every fortnight.</summary>
internal sealed class PlannedMill : IAsyncDisposable
{
    private readonly TestPlant plant;

    private PlannedMill(TestPlant plant) => this.plant = plant;

    public DateTimeOffset Now => plant.Clock.GetUtcNow();

    public void Pass(TimeSpan time) => plant.Clock.Advance(time);

    public static async Task<PlannedMill> OpenAsync()
    {
        var mill = new PlannedMill(await TestPlant.OpenAsync());
        await using var db = mill.plant.Db();
        await MillRows.AddAsync(db, mill.Get<PlanInputs>(), mill.Now, TestContext.Current.CancellationToken);
        return mill;
    }

    public T Get<T>()
        where T : notnull => plant.Get<T>();

    public WearDb Db() => plant.Db();

    public async Task<PlanDraft> DraftAsync() => new(await Get<PlanQuery>().AskAsync(TestContext.Current.CancellationToken));

    public async Task<PlanDraft> ProposedAsync()
    {
        var draft = await DraftAsync();
        await draft.ProposeAsync(stop: TestContext.Current.CancellationToken);
        return draft;
    }

    /// <summary>Keeps a draft, which is to be taken, and says how many decisions that changed.</summary>
    public async Task<int> KeepAsync(PlanDraft draft) => Assert.IsType<PlanAnswer.Planned>(
        await Get<PlanKeeping>().KeepAsync(draft, "planner", TestContext.Current.CancellationToken)).Changed;

    public async Task<List<SwapRow>> SwapsAsync()
    {
        await using var db = Db();
        return [.. db.Swaps.OrderBy(s => s.Id)];
    }

    public ValueTask DisposeAsync() => plant.DisposeAsync();
}
