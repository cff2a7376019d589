namespace WearWatch.Links;

/// <summary>One measure at one visit, for the track.</summary>
/// <param name="At">When; null when only the counter was told.</param>
/// <param name="Hours">Running hours of the fitted chain.</param>
/// <param name="Place">Which link, where.</param>
/// <param name="Finding">What it says.</param>
public sealed record LinkPoint(DateTimeOffset? At, double Hours, string Place, LinkFinding Finding);
