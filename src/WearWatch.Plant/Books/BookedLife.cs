using WearWatch.Lives;

namespace WearWatch.Plant.Books;

/// <summary>One life.</summary>
/// <param name="Number">Which of the position's fitted chains, from 0.</param>
/// <param name="Life">How long it lasted and how it ended.</param>
/// <param name="FittingKnown">
/// Whether its hours count from its fitting; if not they are too few, and the life is left out.
/// </param>
public sealed record BookedLife(int Number, Life Life, bool FittingKnown)
{
    /// <summary>The supplier's lot of the chain, or empty.</summary>
    public string Lot { get; init; } = "";

    /// <summary>When it was fitted, if that was told.</summary>
    public DateTimeOffset? FittedAt { get; init; }

    /// <summary>When it was taken off, or read last while it runs; null if that was not told.</summary>
    public DateTimeOffset? EndedAt { get; init; }

    /// <summary>Whether it was taken off.</summary>
    public bool Removed { get; init; }

    /// <summary>Whether it broke while it ran.</summary>
    public bool Broke { get; init; }

    /// <summary>All hours that it ran, those past its limit too.</summary>
    public double HoursRun { get; init; }

    /// <summary>Its last elongation in percent; null without a reading.</summary>
    public double? LastPercent { get; init; }

    /// <summary>
    /// ln of the wear rate in percent per 1,000 h that its readings show, with its standard error; null where they show none.
    /// </summary>
    public (double Mean, double StandardError)? LogRate { get; init; }
}
