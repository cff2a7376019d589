using WearWatch.Chains.Links;
using WearWatch.Phrases;

namespace WearWatch.Links;

/// <summary>The measures of a link in words.</summary>
public static class LinkWords
{
    /// <summary>A measure, as it is called on screens.</summary>
    public static Phrase Of(LinkMeasure measure) => measure switch
    {
        LinkMeasure.OneLink => $"inner length of one link",
        LinkMeasure.SeveralLinks => $"length over links",
        LinkMeasure.MeanDiameter => $"mean of two diameters",
        _ => $"thinnest diameter",
    };

    /// <summary>What a measure says, in a sentence with its numbers and who says so.</summary>
    public static Phrase Of(LinkFinding finding)
    {
        Phrase what = $"{Of(finding.Measure)} {finding.ValueMm:0.00} mm ± {finding.ExpandedUncertaintyMm:0.00} mm";
        if (finding.Limit is not { } limit)
            return $"No limit is known: {what}; enter the maker's. Cannot be judged from these data.";
        var against = limit.IsLength ? Phrase.Of($"limit {limit.Mm:0.00} mm, {limit.Basis}") : $"least {limit.Mm:0.00} mm, "
            + $"{limit.Basis}";
        return finding switch
        {
            { IsReached: true } => $"Discard limit reached: {what} ({against}). Take out of use now.",
            { MayBeReached: true } =>
                $"Discard limit may be reached: {what} ({against}), within the uncertainty of measuring. Take out of use.",
            { IsToBePlanned: true } =>
                $"{finding.UsedPercent:0} % of the way to its limit: {what} ({against}). A competent person sets the date.",
            _ => $"{Math.Max(0, finding.UsedPercent!.Value):0} % of the way to its limit: {what} ({against}).",
        };
    }
}
