using System.Diagnostics;
using System.Globalization;
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Planning.Plans;
using WearWatch.Plant.Planning;
using WearWatch.Plant.Settings;

namespace WearWatch.Dashboard.Planner;

/// <summary>Why a swap stands where it does, in sentences.</summary>
public static class WhyWords
{
    /// <summary>Where it stands and with which risk.</summary>
    public static Phrase Here(SwapReason reason, PlantTime time, string money) => reason.Here.Window is { } window
        ? $"{time.Day(window.Start)}: {Amount(reason.Here.Own.Total)} {money} by itself. Past its limit by then: "
            + $"{Show.Chance(reason.Here.Own.ProbabilityPast)}; broken: {Show.Chance(reason.Here.Own.ProbabilityFailed)}."
        : Phrase.Of($"beyond the horizon. Past its limit by its next chance: "
            + $"{Show.Chance(reason.Here.Own.ProbabilityPast)}; broken: {Show.Chance(reason.Here.Own.ProbabilityFailed)}.");

    /// <summary>What dates it, where that is not its length.</summary>
    public static Phrase LimitedBy(Phrase cause) => $"First at its limit: {cause}. Its hours left are counted to that.";

    /// <summary>What speaks against the shutdown before.</summary>
    public static Phrase Earlier(SwapReason reason, PlantTime time, string money) => reason.Earlier is { } earlier
        ? Beside(earlier, time, money)
        : Phrase.Of($"No shutdown of its line comes before.");

    /// <summary>What speaks against the shutdown after, or against waiting.</summary>
    public static Phrase Later(SwapReason reason, PlantTime time, string money) => reason switch
    {
        { NotAfter: { } by } => $"It holds a load and is out of use from {time.Day(by)}.",
        { Later: { } later } => Beside(later, time, money),
        _ => $"It waits already.",
    };

    private static Phrase Beside(SwapNeighbour beside, PlantTime time, string money)
    {
        Phrase where = beside.Move.Window is { } window ? Phrase.Of($"On {time.Day(window.Start)}") : $"Beyond the horizon";
        var change = Math.Round(beside.Move.Change);
        if (change == 0 || beside.Main is not { } main) return $"{where} it would cost the same.";
        Phrase because = $"{Of(main)}";
        return change > 0
            ? $"{where} it would cost {Amount(change)} {money} more, most of it for {because}."
            : Phrase.Of($"{where} it would cost {Amount(-change)} {money} less, most of it for {because}. "
                + $"Somebody, or the supply, keeps it here.");
    }

    /// <summary>A cause of cost.</summary>
    public static string Of(CostCause cause) => cause switch
    {
        CostCause.UnusedLife => T["unused chain life"],
        CostCause.PastLimit => T["worn sprockets"],
        CostCause.Breakdowns => T["breakdowns to be expected"],
        CostCause.Stops => T["stops of the line"],
        CostCause.OutOfUse => T["chains out of use"],
        CostCause.Overruns => T["shutdowns that overrun"],
        CostCause.Overtime => T["overtime of the crew"],
        CostCause.Express => T["parts by express"],
        _ => throw new UnreachableException($"Cause {cause} has no words."),
    };

    /// <summary>What is assumed.</summary>
    public static string Of(PlanAssumption assumption) => assumption switch
    {
        PlanAssumption.Costs => T["costs of stops, breakdowns and haste"],
        PlanAssumption.SwapWork => T["hours and people of the swap"],
        PlanAssumption.ChainPrice => T["price of the chain"],
        PlanAssumption.Parts => T["that its parts are there"],
        _ => throw new UnreachableException($"Assumption {assumption} has no words."),
    };

    /// <summary>A change such as +320 or −40, as the person's language writes numbers.</summary>
    public static string WithSign(double change) => Math.Round(change) switch
    {
        0 => "±0",
        > 0 and var more => "+" + Amount(more),
        var less => "−" + Amount(-less),
    };

    private static string Amount(double amount) => amount.ToString("#,0", CultureInfo.CurrentCulture);
}
