using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Diagnostics.HealthChecks;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Worker.Watching;

/// <summary>Whether the plant's memory can be read and written: a full disk still reads.</summary>
internal sealed class StoreHealth(IDbContextFactory<WearDb> database, TimeProvider clock) : IHealthCheck, IDisposable
{
    private const string Job = "health of the store";

    // Anybody may ask; nobody is to make the disk work by asking.
    private static readonly TimeSpan keptFor = TimeSpan.FromSeconds(5);
    private readonly SemaphoreSlim oneAtATime = new(1);
    private (DateTimeOffset At, HealthCheckResult Result) last;

    public async Task<HealthCheckResult> CheckHealthAsync(
        HealthCheckContext context, CancellationToken cancellationToken = default)
    {
        await oneAtATime.WaitAsync(cancellationToken);
        try
        {
            var now = clock.GetUtcNow();
            if ((now - last.At).Duration() > keptFor) last = (now, await LookAsync(now, cancellationToken));
            return last.Result;
        }
        finally
        {
            oneAtATime.Release();
        }
    }

    public void Dispose() => oneAtATime.Dispose();

    private async Task<HealthCheckResult> LookAsync(DateTimeOffset now, CancellationToken ct)
    {
        try
        {
            await using var db = await database.CreateDbContextAsync(ct);
            var written = await db.JobRuns.Where(j => j.Job == Job).ExecuteUpdateAsync(
                j => j.SetProperty(r => r.StartedAt, now).SetProperty(r => r.DoneAt, now), ct);
            if (written == 0)
            {
                db.JobRuns.Add(new JobRunRow { Job = Job, StartedAt = now, DoneAt = now });
                await db.SaveChangesAsync(ct);
            }

            return HealthCheckResult.Healthy();
        }
        catch (Exception e) when (e is not OperationCanceledException)
        {
            return HealthCheckResult.Unhealthy(e.Message);
        }
    }
}
