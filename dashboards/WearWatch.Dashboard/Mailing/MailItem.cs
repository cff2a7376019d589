using WearWatch.Chains;
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Plant.Mailing;
using WearWatch.Plant.Settings;

namespace WearWatch.Dashboard.Mailing;

/// <summary>A notice as a mail says it: what, why, what to do and by when, in the language of what is drawn now.</summary>
/// <param name="Notice">The notice.</param>
/// <param name="Time">The plant's time.</param>
public sealed record MailItem(MailNotice Notice, PlantTime Time)
{
    /// <summary>The chain and where it runs.</summary>
    public string Chain => string.Join(" · ", new[] { Notice.Chain.Name, Notice.Chain.Line, Notice.Chain.Position }
        .Where(part => part.Length > 0));

    /// <summary>What it is about.</summary>
    public string About => TradeWords.Of(Notice.Notice.Kind) + (Notice.Notice.Urgent ? " · " + T["urgent"] : "");

    /// <summary>Why it was raised.</summary>
    public string Why => T[Notice.Notice.Why];

    private string ByWhen => Notice.DueAt is { } due ? Time.Day(due)
        : Notice.Notice.Urgent ? T["now"] : T["with the next round"];

    /// <summary>What to do, by when; what answers it already; what a figure does not say of a chain that lifts.</summary>
    public IReadOnlyList<string> Lines =>
    [
        T[Notice.Notice.WhatToDo],
        T["By when"] + ": " + ByWhen,
        .. Notice.PlannedSwap is { } swap ? [T["Swap planned"] + ": " + Time.Day(swap)] : Array.Empty<string>(),
        .. Notice.HoldsLoad ? [T[Caution.LiftingInBrief]] : Array.Empty<string>(),
    ];
}
