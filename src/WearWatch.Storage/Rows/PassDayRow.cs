using WearWatch.Signals.Passes;

namespace WearWatch.Storage.Rows;

/// <summary>What became of a plant day of passes at a chain's two sensors. It is kept for ever.</summary>
public sealed class PassDayRow
{
    public int ChainId { get; init; }

    /// <summary>The plant day's beginning.</summary>
    public DateTimeOffset Day { get; init; }

    /// <summary>The last burst that counted.</summary>
    public DateTimeOffset LastAt { get; init; }

    public double? ElongationPct { get; init; }

    public double? UncertaintyPct { get; init; }

    /// <summary>Pitches between the sensors; null when it was not believed.</summary>
    public double? Pitches { get; init; }

    /// <summary>Why it was not believed; null when it was.</summary>
    public PassDoubt? Doubt { get; init; }

    public string Why { get; init; } = "";

    public int Bursts { get; init; }

    public int Passes { get; init; }

    public int Missed { get; init; }

    public int Doubled { get; init; }

    public int Stops { get; init; }

    public int UnusedBursts { get; init; }
}
