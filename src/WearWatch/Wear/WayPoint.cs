namespace WearWatch.Wear;

/// <summary>How far a measure had come at one visit.</summary>
/// <param name="At">When; null when only the counter was told.</param>
/// <param name="Hours">Running hours of what wears, from when it was renewed.</param>
/// <param name="Way">The way to its limit.</param>
public sealed record WayPoint(DateTimeOffset? At, double Hours, LimitWay Way);
