using WearWatch.Plant.Files;

namespace WearWatch.Plant.Bench;

/// <summary>How a chain is to be oiled; what is null is not known or was not asked.</summary>
public sealed record ChainOilJson(
    OilFeedJson? Feed, OilGradeJson? Grade, OilAmountJson? Amount, string? Warning, double? IntervalH, string IntervalBasis,
    IReadOnlyList<string> Missing)
{
    public static ChainOilJson Of(OilCalculation sheet) => new(
        sheet.Advice.Feed is { } feed
            ? new OilFeedJson(
                FileWords.Of(feed.Kind), feed.ManualUpTo.MetresPerSecond, feed.BathUpTo.MetresPerSecond, feed.Source,
                feed.IsVerified)
            : null,
        sheet.Advice.Grade is { } grade ? new OilGradeJson(grade.Sae, grade.IsoVg, grade.Source, grade.Remark) : null,
        sheet.Advice.Amount is { } amount ? new OilAmountJson(amount.Text, amount.Source, amount.IsVerified) : null,
        sheet.Advice.Warning, sheet.Plan.IntervalHours, sheet.Plan.Basis, sheet.Advice.Missing);
}

/// <summary>The least way of bringing the oil there that will do.</summary>
public sealed record OilFeedJson(string Kind, double ManualUpToMS, double BathUpToMS, string Source, bool Verified);

/// <summary>Which oil.</summary>
public sealed record OilGradeJson(string Sae, string IsoVg, string Source, string Remark);

/// <summary>How much oil.</summary>
public sealed record OilAmountJson(string Text, string Source, bool Verified);
