using WearWatch.SensorSim.Measuring;

namespace WearWatch.SensorSim;

/// <summary>What was true when a reading was taken; nobody in the mill knows it.</summary>
public sealed record ReadingTruth
{
    /// <summary>Which chain of its position, counted from 1 for the oldest recorded one.</summary>
    public required int ChainNumber { get; init; }

    /// <summary>Running hours of that chain.</summary>
    public required double RunningHours { get; init; }

    /// <summary>True elongation at the measured place, in percent.</summary>
    public required double ElongationPercent { get; init; }

    /// <summary>True rate at which it grew there.</summary>
    public required double RatePercentPer1000Hours { get; init; }

    /// <summary>The elongation at which the chain is to be replaced.</summary>
    public required double LimitPercent { get; init; }

    /// <summary>True running hours until its worst place reaches the limit; zero when it is passed.</summary>
    public required double HoursToLimit { get; init; }

    /// <summary>The gross error in the length, if any.</summary>
    public required Slip Slip { get; init; }

    /// <summary>The slip in the hour counter, if any.</summary>
    public required CounterSlip CounterSlip { get; init; }
}
