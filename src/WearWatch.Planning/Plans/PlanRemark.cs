namespace WearWatch.Planning.Plans;

/// <summary>Where a plan hurts.</summary>
public enum PlanRemarkKind
{
    /// <summary>A chain is left on although it may well pass its limit.</summary>
    ChainLeft,

    /// <summary>A crew has more work than hours.</summary>
    CrewOverloaded,

    /// <summary>A part must come with haste.</summary>
    PartShort,

    /// <summary>A shutdown is too short for a swap in it.</summary>
    WindowTooShort,

    /// <summary>A swap that was to stay where it was cannot: its window is gone.</summary>
    PlaceGone,
}

/// <summary>One thing that does not hold in a plan.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Subject">The chain, crew, part or window that it is about.</param>
/// <param name="At">When, or null.</param>
/// <param name="Amount">How much: hours, pieces or pitches, or a probability for a chain left on.</param>
/// <param name="Why">The reason in plain words.</param>
/// <param name="WhatWouldHelp">What would help, in plain words.</param>
public sealed record PlanRemark(
    PlanRemarkKind Kind, string Subject, DateTimeOffset? At, double Amount, string Why, string WhatWouldHelp);
