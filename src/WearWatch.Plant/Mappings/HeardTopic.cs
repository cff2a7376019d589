using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Mappings;

/// <summary>The last messages of one topic.</summary>
/// <remarks>Thread-safe.</remarks>
internal sealed class HeardTopic(string topic)
{
    private readonly List<HeardMessageRow> last = [];
    private int heard;
    private int kept;

    public string Topic => topic;

    public DateTimeOffset LastAt { get; private set; }

    public void Hear(byte[] payload, DateTimeOffset at)
    {
        lock (last)
        {
            last.Add(new HeardMessageRow
            {
                Topic = topic,
                Place = heard++ % HeardMessages.MostOfTopic,
                Payload = payload,
                At = at,
            });
            if (last.Count > HeardMessages.MostOfTopic) last.RemoveAt(0);
            LastAt = at;
        }
    }

    /// <summary>Those that were heard since the last call, in the order of their places.</summary>
    public IReadOnlyList<HeardMessageRow> NotKept()
    {
        lock (last)
        {
            HeardMessageRow[] rows = [.. last.TakeLast(heard - kept).OrderBy(r => r.Place)];
            kept = heard;
            return rows;
        }
    }
}
