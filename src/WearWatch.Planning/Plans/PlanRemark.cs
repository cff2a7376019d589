namespace WearWatch.Planning.Plans;

/// <summary>Where a plan hurts. The kinds about chains that hold a load come first.</summary>
public enum PlanRemarkKind
{
    /// <summary>A chain that holds a load has no shutdown before its hard date: it is out of use from there.</summary>
    OutOfUse,

    /// <summary>A chain that holds a load cannot be judged from its readings.</summary>
    CannotBeJudged,

    /// <summary>A chain that holds a load has a shutdown before its hard date that lacks something for its swap.</summary>
    HardDateUnsure,

    /// <summary>A swap stands where not even haste brings its parts in time.</summary>
    PartsCannotCome,

    /// <summary>A chain that nobody has measured may well reach its limit.</summary>
    MeasureFirst,

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
/// <param name="Why">The reason.</param>
/// <param name="WhatWouldHelp">What would help.</param>
public sealed record PlanRemark(
    PlanRemarkKind Kind, string Subject, DateTimeOffset? At, double Amount, Phrase Why, Phrase WhatWouldHelp)
{
    /// <summary>What it is about, in words.</summary>
    public Phrase About { get; init; } = Phrase.Verbatim(Subject);

    /// <summary>Whether it is about a chain that holds a load: such remarks stand first, wherever a plan is told.</summary>
    public bool IsOfLoad => Kind <= PlanRemarkKind.HardDateUnsure;
}
