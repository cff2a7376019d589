using WearWatch.Storage;

namespace WearWatch.Plant.Telemetry;

/// <summary>Reads what machines tell under topics and in forms of their own.</summary>
public interface IForeignSignals
{
    /// <summary>Reads a message inside the current transaction; what it changes is saved with it.</summary>
    /// <returns>What it comes to, which may be nothing; null when nobody said how to read it.</returns>
    Task<IReadOnlyList<TelemetryText>?> ReadAsync(WearDb db, Arrival arrival, CancellationToken ct);
}
