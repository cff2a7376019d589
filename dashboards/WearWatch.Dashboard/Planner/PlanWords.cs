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
        Math.Round(amount).ToString("#,0", CultureInfo.InvariantCulture) + " " + money;

    /// <summary>A change such as +320 or −40.</summary>
    public static string WithSign(double change) => Math.Round(change) switch
    {
        0 => "±0",
        > 0 and var more => "+" + more.ToString("#,0", CultureInfo.InvariantCulture),
        var less => "−" + (-less).ToString("#,0", CultureInfo.InvariantCulture),
    };

    /// <summary>What a move changed.</summary>
    public static string Change(string chain, PlanCost before, PlanCost after, string money) =>
        $"{chain} moved: {WithSign(after.Total - before.Total)} {money}, breakdowns to be expected {Breakdowns(before)} → "
        + $"{Breakdowns(after)}.";

    /// <summary>The number of breakdowns to be expected.</summary>
    public static string Breakdowns(PlanCost cost) => cost.ExpectedBreakdowns.ToString("0.00", CultureInfo.InvariantCulture);

    public static string Of(SwapPlacing placing) => placing switch
    {
        SwapPlacing.Proposed => "free to be moved by proposals",
        SwapPlacing.ByHand => "placed by hand",
        SwapPlacing.Locked => "locked",
        _ => throw new UnreachableException($"Placing {placing} has no words."),
    };

    /// <summary>How a shutdown comes again: the usual rules in words, others as they are written in RFC 5545.</summary>
    public static string OfRecurrence(string rule) => rule switch
    {
        "" => "once",
        "FREQ=WEEKLY" => "every week",
        "FREQ=WEEKLY;INTERVAL=2" => "every 2 weeks",
        "FREQ=WEEKLY;INTERVAL=4" => "every 4 weeks",
        "FREQ=YEARLY" => "every year",
        _ => rule,
    };

    public static string Of(PlanStage stage) => stage switch
    {
        PlanStage.Costing => "Working out what each swap costs in each shutdown",
        PlanStage.Searching => "Looking for the best plan",
        PlanStage.Proving => "Proving how good it can be",
        _ => throw new UnreachableException($"Stage {stage} has no words."),
    };

    public static string Of(PlanRemarkKind kind) => kind switch
    {
        PlanRemarkKind.OutOfUse => "Out of use",
        PlanRemarkKind.CannotBeJudged => "Cannot be judged",
        PlanRemarkKind.HardDateUnsure => "Holds a load: swap not sure",
        PlanRemarkKind.PartsCannotCome => "Parts cannot come",
        PlanRemarkKind.MeasureFirst => "Measure first",
        PlanRemarkKind.ChainLeft => "Not scheduled",
        PlanRemarkKind.CrewOverloaded => "Crew overloaded",
        PlanRemarkKind.PartShort => "Part short",
        PlanRemarkKind.WindowTooShort => "Shutdown too short",
        PlanRemarkKind.PlaceGone => "Shutdown gone",
        _ => throw new UnreachableException($"Remark {kind} has no words."),
    };

    /// <summary>The time in which a chain reaches its limit: from its early to its late date.</summary>
    public static string Band(ChainFace face, PlantTime time) => face.Early is not { } early
        ? "limit not in sight"
        : early <= time.Now && face.Late <= time.Now ? "limit exceeded"
        : $"limit {BriefDate(early, time)} – {(face.Late is { } late ? BriefDate(late, time) : "?")}";

    /// <summary>A date such as 14 Jan, with its year when it is not this one.</summary>
    public static string BriefDate(DateTimeOffset at, PlantTime time) => time.DateOf(at) is var day && day.Year == time.Today.Year
        ? day.ToString("d MMM", CultureInfo.InvariantCulture)
        : day.ToString("d MMM yy", CultureInfo.InvariantCulture);
}
