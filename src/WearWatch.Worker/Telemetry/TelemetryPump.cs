using System.Threading.Channels;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;

namespace WearWatch.Worker.Telemetry;

/// <summary>Gathers arrivals into transactions: a commit to disk costs the same for one message and for two hundred.</summary>
/// <remarks>
/// Whoever offers a message is called back after the commit and acknowledges then. The queue is bounded, so a slow disk slows the
/// senders down instead of filling the memory. A batch that cannot be stored is tried again until it can: nothing is dropped.
/// </remarks>
public sealed class TelemetryPump(TelemetryDesk desk, TimeProvider clock, ILogger<TelemetryPump> logger) : BackgroundService
{
    /// <summary>Messages in one transaction, at most.</summary>
    public const int MostInBatch = 200;

    private const int MostWaiting = 2_000;
    private static readonly TimeSpan AgainAfter = TimeSpan.FromSeconds(2);

    private readonly Channel<Offer> waiting = Channel.CreateBounded<Offer>(new BoundedChannelOptions(MostWaiting) { SingleReader = true });

    /// <summary>When the last batch was stored; null when none was since the start.</summary>
    public DateTimeOffset? LastStoredAt { get; private set; }

    /// <summary>Offers a message; waits while the queue is full.</summary>
    /// <param name="arrival">The message.</param>
    /// <param name="stored">Called once after it is committed to disk.</param>
    /// <param name="ct">Stops the waiting.</param>
    public ValueTask OfferAsync(Arrival arrival, Func<Task> stored, CancellationToken ct) => waiting.Writer.WriteAsync(new Offer(arrival, stored), ct);

    /// <summary>Offers a message and waits until it is committed to disk.</summary>
    public async Task StoreAsync(Arrival arrival, CancellationToken ct)
    {
        var committed = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        await OfferAsync(arrival, () =>
        {
            committed.TrySetResult();
            return Task.CompletedTask;
        }, ct);
        await committed.Task.WaitAsync(ct);
    }

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        var batch = new List<Offer>(MostInBatch);
        // The next batch is committed while the last one is being acknowledged.
        var acknowledging = Task.CompletedTask;
        while (await waiting.Reader.WaitToReadAsync(stoppingToken))
        {
            batch.Clear();
            while (batch.Count < MostInBatch && waiting.Reader.TryRead(out var offer)) batch.Add(offer);
            await StoreAsync([.. batch.Select(o => o.Arrival)], stoppingToken);
            await acknowledging;
            acknowledging = AcknowledgeAsync([.. batch]);
        }
    }

    private async Task StoreAsync(Arrival[] arrivals, CancellationToken ct)
    {
        while (true)
        {
            try
            {
                var taken = await desk.TakeAsync(arrivals, ct);
                if (taken.SetAside > 0) logger.MessagesSetAside(taken.SetAside);
                LastStoredAt = clock.GetUtcNow();
                return;
            }
            catch (Exception e) when (e is not OperationCanceledException || !ct.IsCancellationRequested)
            {
                logger.BatchNotStored(e, arrivals.Length, AgainAfter);
                await Task.Delay(AgainAfter, clock, ct);
            }
        }
    }

    private async Task AcknowledgeAsync(Offer[] offers)
    {
        foreach (var offer in offers)
        {
            try
            {
                await offer.Stored();
            }
            catch (Exception e)
            {
                // The sender is gone: it sends the message again, and that changes nothing.
                logger.NotAcknowledged(e.Message);
            }
        }
    }

    private readonly record struct Offer(Arrival Arrival, Func<Task> Stored);
}
