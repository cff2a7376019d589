using Microsoft.EntityFrameworkCore;
using WearWatch.Storage.Rows;
using WearWatch.Worker.Tests;
using A = WearWatch.Worker.Tests.A;

namespace WearWatch.Servers.Tests;

/// <summary>Regular jobs over several worker processes on one PostgreSQL.</summary>
public sealed class SharedJobTests
{
    private const int Chains = 600;

    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(3);

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_job_whose_worker_is_killed_in_the_middle_is_finished_once_by_the_other_and_nothing_is_done_twice()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.Import.ImportAsync([
            A.File("chains.csv", "chain,pitch_mm\n" + string.Concat(Enumerable.Range(0, Chains).Select(i => $"C{i},25.4\n"))),
            A.Readings([.. Enumerable.Range(0, 2 * Chains)
                .Select(i => A.Row($"C{i / 2}", 500 * (1 + i % 2), 0.2 * (1 + i % 2)))]),
        ], null, Ct);
        // The plant's clock stands at a day that is past: to the workers every forecast is of another day, and due.
        var now = new DateTimeOffset(TimeProvider.System.GetUtcNow().UtcDateTime.Date, TimeSpan.Zero);
        await using var db = plant.Db();
        Assert.Equal(0, await db.Forecasts.CountAsync(f => f.MadeAt >= now, Ct));

        await using var one = ServeProcess.Serve(("Database", plant.Database));
        await using var other = ServeProcess.Serve(("Database", plant.Database));
        await UntilAsync(async () => await db.Forecasts.CountAsync(f => f.MadeAt >= now, Ct) > 100, () => one.Said + other.Said);
        var begun = await RunAsync(db);
        var (killed, left) = begun.Worker.EndsWith($" {one.Id}", StringComparison.Ordinal) ? (one, other) : (other, one);
        Assert.EndsWith($" {killed.Id}", begun.Worker, StringComparison.Ordinal);
        await killed.KillAsync();
        var done = await db.Forecasts.CountAsync(f => f.MadeAt >= now, Ct);
        Assert.InRange(done, 100, Chains - 1);

        await UntilAsync(async () => (await RunAsync(db)).DoneAt > begun.StartedAt, () => left.Said);
        var finished = await RunAsync(db);
        Assert.EndsWith($" {left.Id}", finished.Worker, StringComparison.Ordinal);
        Assert.Equal(Chains, await db.Forecasts.CountAsync(f => f.IsLatest && f.MadeAt >= now, Ct));
        Assert.Equal(Chains, await db.Forecasts.CountAsync(f => f.MadeAt >= now, Ct));
        Assert.Equal(Chains, await db.Forecasts.CountAsync(f => f.IsLatest, Ct));
    }

    private static async Task<JobRunRow> RunAsync(Storage.WearDb db) =>
        await db.JobRuns.AsNoTracking().SingleAsync(j => j.Job == "review", Ct);

    private static async Task UntilAsync(Func<Task<bool>> isSo, Func<string> otherwise)
    {
        var since = System.Diagnostics.Stopwatch.StartNew();
        while (!await isSo())
        {
            Assert.True(since.Elapsed < Patience, otherwise());
            await Task.Delay(20, Ct);
        }
    }
}
