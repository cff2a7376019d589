using System.Threading.Channels;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Time.Testing;
using WearWatch.Worker.Jobs;

namespace WearWatch.Worker.Tests.Jobs;

public sealed class JobLoopTests
{
    private static readonly TimeSpan Every = TimeSpan.FromMinutes(5);

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_job_runs_at_once_and_then_at_every_tick()
    {
        var clock = new FakeTimeProvider();
        using var loop = new Loop(clock, new LogBook(), _ => Task.CompletedTask);
        await loop.StartAsync(Ct);
        Assert.Equal(1, await loop.NextRunAsync());
        clock.Advance(Every);
        Assert.Equal(2, await loop.NextRunAsync());
        clock.Advance(Every - TimeSpan.FromSeconds(1));
        Assert.False(loop.HasRun);
        clock.Advance(TimeSpan.FromSeconds(1));
        Assert.Equal(3, await loop.NextRunAsync());
        await loop.StopAsync(Ct);
    }

    [Fact]
    public async Task A_failure_is_logged_and_the_job_is_tried_again()
    {
        var clock = new FakeTimeProvider();
        using var log = new LogBook();
        using var loop =
            new Loop(clock, log, run => run == 1 ? throw new InvalidOperationException("the disk is full") : Task.CompletedTask);
        await loop.StartAsync(Ct);
        await loop.NextRunAsync();
        clock.Advance(Every);
        Assert.Equal(2, await loop.NextRunAsync());
        Assert.Equal((LogLevel.Error, "The test job failed; it is tried again in 00:05:00"), Assert.Single(log.Lines));
        await loop.StopAsync(Ct);
    }

    [Fact]
    public async Task A_job_that_is_stopped_ends_without_a_failure()
    {
        using var log = new LogBook();
        using var loop = new Loop(new FakeTimeProvider(), log, _ => Task.CompletedTask);
        await loop.StartAsync(Ct);
        await loop.NextRunAsync();
        await loop.StopAsync(Ct);
        Assert.Empty(log.Lines);
    }

    private sealed class Loop(TimeProvider clock, LogBook log, Func<int, Task> job)
        : JobLoop("test job", Every, clock, log.CreateLogger(""))
    {
        private readonly Channel<int> runs = Channel.CreateUnbounded<int>();
        private int count;

        public bool HasRun => runs.Reader.TryPeek(out _);

        public ValueTask<int> NextRunAsync() => runs.Reader.ReadAsync(Ct);

        protected override Task RunOnceAsync(CancellationToken ct)
        {
            runs.Writer.TryWrite(++count);
            return job(count);
        }
    }
}
