using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Telemetry;

/// <summary>Tells whoever listens in this process which messages were stored, so that conclusions follow at once.</summary>
/// <remarks>Thread-safe. Listeners are called on the teller's thread, after the commit, and must return at once.</remarks>
public sealed class TelemetryNews
{
    /// <summary>Messages that were stored just now.</summary>
    public event Action<IReadOnlyList<TelemetryRow>>? Stored;

    /// <summary>Tells of messages, after their commit.</summary>
    public void Tell(IReadOnlyList<TelemetryRow> rows) => Stored?.Invoke(rows);
}
