using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Telemetry;

/// <summary>Tells whoever listens in this process which messages were stored, so that conclusions follow at once.</summary>
/// <remarks>Thread-safe. Listeners are called on the teller's thread, after the commit, and must return at once.</remarks>
public sealed class TelemetryNews
{
    public event Action<IReadOnlyList<TelemetryRow>>? Stored;

    public void Tell(IReadOnlyList<TelemetryRow> rows) => Stored?.Invoke(rows);
}
