using WearWatch.Chains;
using WearWatch.Phrases;

namespace WearWatch.Lubrication;

/// <summary>What is to be done for a chain's oil, how often, and who says so.</summary>
/// <param name="Task">What is to be done.</param>
/// <param name="IntervalHours">Running hours between two times; null when nothing is foreseen.</param>
/// <param name="Basis">Where the interval comes from, in words for the screen.</param>
public sealed record OilingPlan(OilingTask Task, double? IntervalHours, Phrase Basis)
{
    /// <summary>So many months at the latest, however little it runs; null for none.</summary>
    public int? MostMonths { get; init; }

    /// <summary>
    /// Looking at an automatic oiler: once a week of running round the clock. Common practice, no source found.
    /// </summary>
    public const double CheckOfOilerHours = 168;

    /// <summary>The plan for a chain.</summary>
    /// <remarks>
    /// The plant's own interval wins. Else the handbook's, times the factor for the surroundings that the plant sets. No
    /// published factor for dust, moisture or heat was found, so it is 1 until the plant knows better. The handbook's figures
    /// are those of roller drives: a chain that lifts has its own kind's, which no factor makes longer, or none.
    /// </remarks>
    /// <param name="card">The chain.</param>
    /// <param name="terms">What the plant says of its oiling.</param>
    /// <param name="isFirst">Whether the chain still runs on the maker's oil.</param>
    public static OilingPlan For(ChainCard card, OilTerms terms, bool isFirst)
    {
        var factor = terms.SurroundingsOf(card) * (isFirst ? terms.FirstIntervalFactor : 1);
        var task = card.Duty.Lubrication switch
        {
            LubricationState.Auto => OilingTask.CheckOiler,
            // What an oiler feeds is not oiled by hand, however the joints are kept: its level and its working are seen to.
            LubricationState.Manual or LubricationState.Poor when card.OilMethod is not (null or OilMethod.Hand) =>
                OilingTask.CheckOiler,
            LubricationState.Manual or LubricationState.Poor => OilingTask.OilByHand,
            _ => card.OilingIntervalHours is null ? OilingTask.None : OilingTask.OilByHand,
        };
        if (card.OilingIntervalHours is { } own) return new OilingPlan(task, own, $"interval set by the plant: {own:#,0.#} h");
        if (card.HoldsLoad && task != OilingTask.None) return OfLifting(card, task, Math.Min(1, factor));
        return task switch
        {
            OilingTask.OilByHand => Handbook(
                task, card.Family.OiledByHandHours.Value, ByHand(card.Family.OiledByHandHours), factor),
            OilingTask.CheckOiler => Handbook(
                task, CheckOfOilerHours,
                $"see to the fill level and the working of the oiler once a running week (common practice)", factor),
            _ => new OilingPlan(task, null, card.Duty.Lubrication == LubricationState.Dry
                ? Phrase.Of($"this chain runs dry; set an interval if it is to be lubricated")
                : $"how this chain is lubricated is not recorded"),
        };
    }

    private static Phrase ByHand(Sourced hours) => hours.IsVerified
        ? Phrase.Of($"about every {hours.Value:#,0.#} h of running or before the joints dry {Sourced.InBrief(hours.Source)}")
        : $"about every {hours.Value:#,0.#} h of running ({hours.Source})";

    private static OilingPlan OfLifting(ChainCard card, OilingTask task, double factor)
    {
        if (card.Family.OilingWhenLifting is not { } care)
            return new OilingPlan(
                task, null, $"how often a lifting chain of this kind is oiled no source says here: set what its maker says");
        var source = Sourced.InBrief(care.Source);
        Phrase basis =
            $"at the latest after {care.Hours:#,0.#} h of running or {care.Months} month, whichever comes first {source}";
        return Handbook(task, care.Hours, basis, factor) with { MostMonths = care.Months };
    }

    private static OilingPlan Handbook(OilingTask task, double hours, Phrase basis, double factor) => new(
        task, hours * factor,
        factor == 1
            ? basis
            : $"{basis}, times {factor:0.##} for the surroundings and the first oil (the plant's)");
}
