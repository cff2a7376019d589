using MQTTnet;

namespace WearWatch.Worker.Mqtt;

/// <summary>What one connection is subscribed to; it follows the mappings while the connection stands.</summary>
internal sealed class Subscriptions : IDisposable
{
    private readonly HashSet<string> filters = new(StringComparer.Ordinal);
    private readonly IntakeTopics topics;
    private readonly IMqttClient client;
    private TaskCompletionSource changed = Bell();

    public Subscriptions(IntakeTopics topics, IMqttClient client)
    {
        (this.topics, this.client) = (topics, client);
        topics.Changed += OnChanged;
    }

    public void Dispose() => topics.Changed -= OnChanged;

    /// <summary>Subscribes to what is wanted and not yet subscribed to, and leaves what is wanted no more.</summary>
    public async Task FollowAsync(CancellationToken ct)
    {
        await topics.LookAsync(ct);
        changed = Bell();
        var wanted = topics.Filters;
        var former = await topics.FormerAsync(ct);
        if (former.Count > 0)
        {
            var leave = new MqttClientUnsubscribeOptionsBuilder();
            foreach (var filter in former) leave.WithTopicFilter(filter);
            await client.UnsubscribeAsync(leave.Build(), ct);
            filters.ExceptWith(former);
        }

        var join = new MqttClientSubscribeOptions { TopicFilters = [.. wanted.Where(f => filters.Add(f.Topic))] };
        if (join.TopicFilters.Count > 0) await client.SubscribeAsync(join, ct);
    }

    /// <summary>Waits for a change; false when the connection ended before.</summary>
    public async Task<bool> ChangeAsync(Task ended, CancellationToken ct) =>
        await Task.WhenAny(ended, changed.Task).WaitAsync(ct) != ended;

    private void OnChanged() => changed.TrySetResult();

    private static TaskCompletionSource Bell() => new(TaskCreationOptions.RunContinuationsAsynchronously);
}
