using MQTTnet;

namespace WearWatch.Worker.Mqtt;

/// <summary>Publishes at the broker with which this process is connected, or which it is.</summary>
public sealed class BrokerVoice
{
    private volatile Func<MqttApplicationMessage, CancellationToken, Task>? speak;

    /// <summary>Whether anybody hears.</summary>
    public bool IsHeard => speak is not null;

    /// <summary>Publishes once; what nobody hears is not kept.</summary>
    public Task SayAsync(string topic, byte[] payload, CancellationToken ct) =>
        speak?.Invoke(new MqttApplicationMessage { Topic = topic, PayloadSegment = payload }, ct) ?? Task.CompletedTask;

    /// <summary>Gives it the way to the broker, until what is answered is disposed of.</summary>
    internal IDisposable By(Func<MqttApplicationMessage, CancellationToken, Task> way)
    {
        speak = way;
        return new Way(this);
    }

    private sealed class Way(BrokerVoice voice) : IDisposable
    {
        public void Dispose() => voice.speak = null;
    }
}
