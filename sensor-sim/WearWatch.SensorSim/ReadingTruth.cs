using WearWatch.SensorSim.Measuring;

namespace WearWatch.SensorSim;

/// <summary>What was true when a reading was taken; nobody in the mill knows it.</summary>
/// <param name="ChainNumber">Which chain of its position, counted from 1 for the oldest recorded one.</param>
/// <param name="RunningHours">Running hours of that chain.</param>
/// <param name="ElongationPercent">True elongation at the measured place, in percent.</param>
/// <param name="RatePercentPer1000Hours">True rate at which it grew there.</param>
/// <param name="LimitPercent">The elongation at which the chain is to be replaced.</param>
/// <param name="HoursToLimit">True running hours until its worst place reaches the limit; zero when it is passed.</param>
/// <param name="Slip">The gross error in the reading, if any.</param>
public sealed record ReadingTruth(
    int ChainNumber, double RunningHours, double ElongationPercent, double RatePercentPer1000Hours, double LimitPercent,
    double HoursToLimit, Slip Slip);
