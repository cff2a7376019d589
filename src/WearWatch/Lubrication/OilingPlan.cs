using System.Globalization;
using WearWatch.Chains;

namespace WearWatch.Lubrication;

/// <summary>What is to be done for a chain's oil, how often, and who says so.</summary>
/// <param name="Task">What is to be done.</param>
/// <param name="IntervalHours">Running hours between two times; null when nothing is foreseen.</param>
/// <param name="Basis">Where the interval comes from, in words for the screen.</param>
public sealed record OilingPlan(OilingTask Task, double? IntervalHours, string Basis)
{
    /// <summary>So many months at the latest, however little it runs; null for none.</summary>
    public int? MostMonths { get; init; }

    /// <summary>
    /// Oiling by hand: about every 8 hours of running, or before the joints dry. Source: docs/references.md [13].
    /// </summary>
    public const double HandbookByHandHours = 8;

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
            LubricationState.Manual or LubricationState.Poor => OilingTask.OilByHand,
            _ => card.OilingIntervalHours is null ? OilingTask.None : OilingTask.OilByHand,
        };
        if (card.OilingIntervalHours is { } own) return new OilingPlan(task, own, $"interval set by the plant: {Hours(own)}");
        if (card.HoldsLoad && task != OilingTask.None) return OfLifting(card, task, Math.Min(1, factor));
        return task switch
        {
            OilingTask.OilByHand => Handbook(
                task, HandbookByHandHours, "about every 8 h of running or before the joints dry [13]",
                factor),
            OilingTask.CheckOiler => Handbook(
                task, CheckOfOilerHours, "inspect the lubricator once a running week (common practice)",
                factor),
            _ => new OilingPlan(task, null, card.Duty.Lubrication == LubricationState.Dry
                ? "this chain runs dry; set an interval if it is to be lubricated"
                : "how this chain is lubricated is not recorded"),
        };
    }

    private static OilingPlan OfLifting(ChainCard card, OilingTask task, double factor)
    {
        if (card.Family.OilingWhenLifting is not { } care)
            return new OilingPlan(
                task, null, "how often a lifting chain of this kind is oiled no source says here: set what its maker says");
        var basis = string.Create(
            CultureInfo.InvariantCulture,
            $"at the latest after {care.Hours:0.#} h of running or {care.Months} month, whichever comes first ({care.Source})");
        return Handbook(task, care.Hours, basis, factor) with { MostMonths = care.Months };
    }

    private static OilingPlan Handbook(OilingTask task, double hours, string basis, double factor) => new(
        task, hours * factor,
        factor == 1
            ? basis
            : string.Create(CultureInfo.InvariantCulture,
                $"{basis}, times {factor:0.##} for the surroundings and the first oil (the plant's)"));

    private static string Hours(double hours) => string.Create(CultureInfo.InvariantCulture, $"{hours:0.#} h");
}
