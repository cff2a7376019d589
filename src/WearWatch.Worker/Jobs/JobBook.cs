using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Settings;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Worker.Jobs;

/// <summary>Keeps when each regular job last ran, where, and with what end, for all processes of a plant.</summary>
public sealed class JobBook(IDbContextFactory<WearDb> database, TimeProvider clock)
{
    private static readonly string Worker = $"{Environment.MachineName} {Environment.ProcessId}";

    /// <summary>When a job was last brought to its end; null while it never was.</summary>
    public async Task<DateTimeOffset?> DoneAtAsync(string job, CancellationToken ct = default)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        return await db.JobRuns.Where(j => j.Job == job).Select(j => j.DoneAt).SingleOrDefaultAsync(ct);
    }

    /// <summary>Runs a job and keeps how it went.</summary>
    public async Task RunAsync(string job, Func<CancellationToken, Task> run, CancellationToken ct)
    {
        using var trace = Meters.Traces.StartActivity(job);
        var began = clock.GetTimestamp();
        await ChangeAsync(job, row => (row.Worker, row.StartedAt, row.Fault) = (Worker, clock.GetUtcNow(), ""), ct);
        try
        {
            await run(ct);
        }
        catch (Exception e) when (e is not OperationCanceledException || !ct.IsCancellationRequested)
        {
            Meters.Jobs.Keep(job, clock.GetElapsedTime(began), e);
            await ChangeAsync(job, row => row.Fault = e.Message, ct);
            throw;
        }

        Meters.Jobs.Keep(job, clock.GetElapsedTime(began), failure: null);
        await ChangeAsync(job, row => (row.Worker, row.DoneAt) = (Worker, clock.GetUtcNow()), ct);
    }

    private async Task ChangeAsync(string job, Action<JobRunRow> change, CancellationToken ct)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        var row = await db.JobRuns.SingleOrDefaultAsync(j => j.Job == job, ct);
        if (row is null) db.JobRuns.Add(row = new JobRunRow { Job = job });
        change(row);
        await db.SaveChangesAsync(ct);
        await transaction.CommitAsync(ct);
    }
}
