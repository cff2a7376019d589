using WearWatch.Plant.Files;

namespace WearWatch.Plant.Bench;

/// <summary>How a chain is to be oiled; what is null is not known or was not asked.</summary>
public sealed record ChainOilJson
{
    /// <summary>The least way of bringing the oil there that will do.</summary>
    public required OilFeedJson? Feed { get; init; }

    /// <summary>Which oil.</summary>
    public required OilGradeJson? Grade { get; init; }

    /// <summary>How much oil.</summary>
    public required OilAmountJson? Amount { get; init; }

    /// <summary>Why the way in which it is oiled does not do at its speed; null when it does or nobody can tell.</summary>
    public required Phrase? Warning { get; init; }

    /// <summary>What to remember before it is touched.</summary>
    public required IReadOnlyList<Phrase> Caution { get; init; }

    /// <summary>Running hours between two oilings, or looks at the oiler; null when nothing is foreseen.</summary>
    public required double? IntervalH { get; init; }

    /// <summary>What the interval rests on.</summary>
    public required Phrase IntervalBasis { get; init; }

    /// <summary>What has to be told for the rest.</summary>
    public required IReadOnlyList<Phrase> Missing { get; init; }

    /// <summary>The wire form of a calculation.</summary>
    public static ChainOilJson Of(OilCalculation worked) => new()
    {
        Feed = worked.Advice.Feed is { } feed
            ? new OilFeedJson(
                FileWords.Of(feed.Kind), feed.ManualUpTo.MetresPerSecond, feed.BathUpTo.MetresPerSecond, feed.Source,
                feed.IsVerified)
            : null,
        Grade = worked.Advice.Grade is { } grade
            ? new OilGradeJson(grade.Sae, grade.IsoVg, grade.Source, grade.Remark)
            : null,
        Amount = worked.Advice.Amount is { } amount ? new OilAmountJson(amount.Text, amount.Source, amount.IsVerified) : null,
        Warning = worked.Advice.Warning,
        Caution = [.. worked.Advice.Cautions.Select(c => c.Words), .. worked.Cautions],
        IntervalH = worked.Plan.IntervalHours,
        IntervalBasis = worked.Plan.Basis,
        Missing = worked.Advice.Missing,
    };
}
