namespace WearWatch.Lubrication.Intervals;

/// <summary>What 1,000 running hours of the average chain cost at an interval.</summary>
/// <param name="IntervalHours">Running hours between two oilings.</param>
/// <param name="Cost">Wear and oil.</param>
/// <param name="Low">Lower end of its 90 % band.</param>
/// <param name="High">Upper end of its 90 % band.</param>
public sealed record CostPoint(double IntervalHours, double Cost, double Low, double High);
