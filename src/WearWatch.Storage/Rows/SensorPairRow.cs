using WearWatch.Signals.Passes;

namespace WearWatch.Storage.Rows;

/// <summary>
/// Two sensors at a chain, as somebody measured them in. Rows are only ever added: the newest one that begins before a day holds
/// for it.
/// </summary>
public sealed class SensorPairRow
{
    public int Id { get; init; }

    public int ChainId { get; init; }

    /// <summary>From when on it holds.</summary>
    public DateTimeOffset From { get; init; }

    public double DistanceMm { get; init; }

    public double DistanceUncertaintyMm { get; init; }

    public int? DriverTeeth { get; init; }

    public string ToldBy { get; init; } = "";

    /// <summary>The pair as the domain knows it.</summary>
    public SensorPair ToPair(double pitchMm) => new(pitchMm, DistanceMm, DistanceUncertaintyMm, DriverTeeth);
}
