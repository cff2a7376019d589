using WearWatch.Chains.Links;
using WearWatch.Wear;

namespace WearWatch.Links;

/// <summary>What one measure says against its own limit.</summary>
/// <param name="Measure">Which measure.</param>
/// <param name="ValueMm">Its value in millimetres.</param>
/// <param name="StandardUncertaintyMm">Standard uncertainty (k = 1) of the value, in millimetres.</param>
/// <param name="NewMm">What it is when the chain is new, in millimetres.</param>
/// <param name="Limit">Its limit; null where none is known: then it cannot be judged.</param>
public sealed record LinkFinding(
    LinkMeasure Measure, double ValueMm, double StandardUncertaintyMm, double NewMm, LinkLimit? Limit)
{
    /// <summary>Expanded uncertainty at k = 2, about 95 %, in millimetres.</summary>
    public double ExpandedUncertaintyMm => 2 * StandardUncertaintyMm;

    /// <summary>How much it has changed since new, in percent of new; growth of a length, loss of a diameter.</summary>
    public double ChangePercent => 100 * Math.Abs(NewMm - ValueMm) / NewMm * (IsWorn ? 1 : -1);

    /// <summary>How far it has come from new to its limit; null without a limit.</summary>
    public LimitWay? Way => Limit is { } limit ? LimitWay.Of(ValueMm, ExpandedUncertaintyMm, NewMm, limit.Mm) : null;

    /// <summary>The same in percent of that way; null without a limit.</summary>
    public double? UsedPercent => Way?.Percent;

    /// <summary>Expanded uncertainty (k = 2) of <see cref="UsedPercent"/>; null without a limit.</summary>
    public double? ExpandedUsedPercent => Way?.ExpandedPercent;

    /// <summary>Whether its limit has been reached.</summary>
    public bool IsReached => Way?.IsReached == true;

    /// <summary>Whether it has come so far that a renewal is planned.</summary>
    public bool IsToBePlanned => Way?.IsToBePlanned == true;

    /// <summary>Whether the upper end of its own uncertainty reaches the limit.</summary>
    public bool MayBeReached => Way?.MayBeReached == true;

    /// <summary>
    /// The severity for a chain that holds a load: out of use where the limit may have been reached, not only where it surely
    /// was.
    /// </summary>
    public Condition Condition => UsedPercent is null ? Condition.NotKnown
        : MayBeReached ? Condition.SwapNow
        : IsToBePlanned ? Condition.PlanASwap
        : Condition.WithinLimit;

    private bool IsWorn => Measure is LinkMeasure.OneLink or LinkMeasure.SeveralLinks
        ? ValueMm >= NewMm
        : ValueMm <= NewMm;
}
