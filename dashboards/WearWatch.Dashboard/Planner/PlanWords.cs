using System.Diagnostics;
using System.Globalization;
using WearWatch.Planning.Plans;
using WearWatch.Plant.Planning;
using WearWatch.Plant.Settings;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Planner;

/// <summary>The planner's figures and choices in words.</summary>
public static class PlanWords
{
    /// <summary>An amount such as 12,400 EUR.</summary>
    public static string Money(double amount, string money) =>
        Math.Round(amount).ToString("#,0", CultureInfo.CurrentCulture) + " " + money;

    /// <summary>A change such as +320 or −40.</summary>
    public static string WithSign(double change) => Math.Round(change) switch
    {
        0 => "±0",
        > 0 and var more => "+" + more.ToString("#,0", CultureInfo.CurrentCulture),
        var less => "−" + (-less).ToString("#,0", CultureInfo.CurrentCulture),
    };

    /// <summary>What a move changed.</summary>
    public static string Change(string chain, PlanCost before, PlanCost after, string money) =>
        T[$"{chain} moved: {WithSign(after.Total - before.Total)} {money}, breakdowns to be expected {Breakdowns(before)} → "
            + $"{Breakdowns(after)}."];

    /// <summary>The number of breakdowns to be expected.</summary>
    public static string Breakdowns(PlanCost cost) => cost.ExpectedBreakdowns.ToString("0.00", CultureInfo.CurrentCulture);

    public static string Of(SwapPlacing placing) => placing switch
    {
        SwapPlacing.Proposed => T["free to be moved by proposals"],
        SwapPlacing.ByHand => T["placed by hand"],
        SwapPlacing.Locked => T["locked"],
        _ => throw new UnreachableException($"Placing {placing} has no words."),
    };

    /// <summary>How a shutdown comes again: the usual rules in words, others as they are written in RFC 5545.</summary>
    public static string OfRecurrence(string rule) => rule switch
    {
        "" => T["once"],
        "FREQ=WEEKLY" => T["every week"],
        "FREQ=WEEKLY;INTERVAL=2" => T["every 2 weeks"],
        "FREQ=WEEKLY;INTERVAL=4" => T["every 4 weeks"],
        "FREQ=YEARLY" => T["every year"],
        _ => rule,
    };

    public static string Of(PlanStage stage) => stage switch
    {
        PlanStage.Costing => T["Working out what each swap costs in each shutdown"],
        PlanStage.Searching => T["Looking for the best plan"],
        PlanStage.Proving => T["Proving how good it can be"],
        _ => throw new UnreachableException($"Stage {stage} has no words."),
    };

    public static string Of(PlanRemarkKind kind) => kind switch
    {
        PlanRemarkKind.OutOfUse => T["Out of use"],
        PlanRemarkKind.CannotBeJudged => T["Cannot be judged"],
        PlanRemarkKind.HardDateUnsure => T["Holds a load: swap not sure"],
        PlanRemarkKind.PartsCannotCome => T["Parts cannot come"],
        PlanRemarkKind.MeasureFirst => T["Measure first"],
        PlanRemarkKind.ChainLeft => T["Not scheduled"],
        PlanRemarkKind.CrewOverloaded => T["Crew overloaded"],
        PlanRemarkKind.PartShort => T["Part short"],
        PlanRemarkKind.WindowTooShort => T["Shutdown too short"],
        PlanRemarkKind.PlaceGone => T["Shutdown gone"],
        _ => throw new UnreachableException($"Remark {kind} has no words."),
    };

    /// <summary>
    /// The time in which a chain reaches its limit: from its early to its late date, with the cause where it is not the length.
    /// </summary>
    public static string Band(ChainFace face, PlantTime time) => face.Early is not { } early
        ? T["limit not in sight"]
        : (early <= time.Now && face.Late <= time.Now ? T["limit exceeded"]
            : T[$"limit {BriefDate(early, time)} – {(face.Late is { } late ? BriefDate(late, time) : "?")}"])
            + (face.LimitedBy.IsEmpty ? "" : ", " + T[face.LimitedBy]);

    /// <summary>
    /// When pitches are to be taken out or it is to be tensioned anew, before it is replaced; null where neither is due.
    /// </summary>
    public static string? Shorten(ChainFace face, PlantTime time) => face switch
    {
        { ShortenFrom: { } from, ShortenPitches: { } n } =>
            (from <= time.Now ? T[$"take out {n} pitches now"] : T[$"take out {n} pitches from {BriefDate(from, time)}"])
            + (face.ShortenWith.Count > 0 ? ", " + T[$"together with {string.Join(", ", face.ShortenWith)}"] : ""),
        { TensionFrom: { } from } => from <= time.Now ? T["tension anew now"] : T[$"tension anew from {BriefDate(from, time)}"],
        _ => null,
    };

    /// <summary>A date such as 14 Jan, with its year when it is not this one.</summary>
    public static string BriefDate(DateTimeOffset at, PlantTime time) => time.DateOf(at) is var day && day.Year == time.Today.Year
        ? DateWords.DayOfYear(day, CultureInfo.CurrentCulture)
        : PlantTime.Day(day);
}
