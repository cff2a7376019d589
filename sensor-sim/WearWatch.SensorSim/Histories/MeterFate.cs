namespace WearWatch.SensorSim.Histories;

/// <summary>What becomes of a position's hour counter.</summary>
internal enum MeterFate
{
    /// <summary>It runs on.</summary>
    RunsOn,

    /// <summary>It is exchanged, and the exchange is recorded.</summary>
    ExchangeRecorded,

    /// <summary>It is exchanged, and nobody writes it down.</summary>
    ExchangeForgotten,
}
