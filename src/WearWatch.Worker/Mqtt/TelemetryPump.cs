using System.Threading.Channels;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using WearWatch.Plant.Telemetry;

namespace WearWatch.Worker.Mqtt;

/// <summary>Gathers arrivals into transactions: a commit to disk costs the same for one message and for hundreds.</summary>
/// <remarks>
/// Whoever offers a message is called back after the commit and acknowledges then. The queue is bounded, so a slow disk slows the
/// senders down instead of filling the memory. A batch that cannot be stored is tried again until it can: nothing is dropped.
/// </remarks>
public sealed class TelemetryPump(TelemetryDesk desk, TimeProvider clock, ILogger<TelemetryPump> logger) : BackgroundService
{
    /// <summary>Messages in one transaction, at most.</summary>
    public const int MostInBatch = 500;

    /// <summary>A message may hold thousands; what else wants to write shall not wait for seconds.</summary>
    private const int MostBytesInBatch = 4 << 20;

    private const int MostWaiting = 2_000;
    private const int MostLooks = 6;
    private static readonly TimeSpan BetweenLooks = TimeSpan.FromMilliseconds(3);
    private static readonly TimeSpan AgainAfter = TimeSpan.FromSeconds(2);

    private readonly Channel<Offer> waiting =
        Channel.CreateBounded<Offer>(new BoundedChannelOptions(MostWaiting) { SingleReader = true });

    /// <summary>When the last batch was stored; null when none was since the start.</summary>
    public DateTimeOffset? LastStoredAt { get; private set; }

    /// <summary>Offers a message; waits while the queue is full.</summary>
    /// <param name="arrival">The message.</param>
    /// <param name="stored">Called once after it is committed to disk.</param>
    /// <param name="ct">Stops the waiting.</param>
    public ValueTask OfferAsync(Arrival arrival, Func<Task> stored, CancellationToken ct) =>
        waiting.Writer.WriteAsync(new Offer(arrival, stored), ct);

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
            await GatherAsync(batch, stoppingToken);
            await StoreAsync([.. batch.Select(o => o.Arrival)], stoppingToken);
            await acknowledging;
            acknowledging = AcknowledgeAsync([.. batch]);
        }
    }

    /// <summary>
    /// Takes what waits. One message alone goes at once; several say that a flock is coming, and while it comes it is given some
    /// milliseconds more. They pass by the machine's clock, wherever the plant's stands.
    /// </summary>
    private async Task GatherAsync(List<Offer> batch, CancellationToken ct)
    {
        batch.Clear();
        var bytes = 0;
        for (var look = 1; look <= MostLooks; look++)
        {
            if (look > 1) await Task.Delay(BetweenLooks, ct);
            var before = batch.Count;
            while (batch.Count < MostInBatch && bytes < MostBytesInBatch && waiting.Reader.TryRead(out var offer))
            {
                batch.Add(offer);
                bytes += offer.Arrival.Payload.Length;
            }

            if (batch.Count is 1 or MostInBatch || batch.Count == before) return;
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
