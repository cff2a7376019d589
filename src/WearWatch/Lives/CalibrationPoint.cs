namespace WearWatch.Lives;

/// <summary>How often the limit was reached by a percentile of the forecast, next to how often it should have been.</summary>
/// <param name="Stated">The share that the forecasts stated, 0 to 1.</param>
/// <param name="Observed">The share that was seen.</param>
public readonly record struct CalibrationPoint(double Stated, ObservedShare Observed);
