namespace WearWatch.Lubrication.Intervals;

/// <summary>The interval of least cost.</summary>
/// <param name="Hours">Running hours.</param>
/// <param name="LowHours">Lower end of its 90 % band.</param>
/// <param name="HighHours">Upper end of its 90 % band.</param>
/// <param name="IsBeyondSeen">Whether costs still fall where the plant's experience ends: it is then at least so long.</param>
/// <param name="Curve">Cost against interval.</param>
/// <param name="SavingPer1000Hours">What it saves against today's mean interval, for one chain and 1,000 running hours.</param>
public sealed record BestInterval(
    double Hours, double LowHours, double HighHours, bool IsBeyondSeen, IReadOnlyList<CostPoint> Curve,
    double SavingPer1000Hours);
