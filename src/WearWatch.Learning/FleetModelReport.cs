namespace WearWatch.Learning;

/// <summary>How a fleet model was made and how well it does on chains that it has not seen.</summary>
public sealed record FleetModelReport
{
    /// <summary>Chains that it learned from.</summary>
    public required int ChainsUsed { get; init; }

    /// <summary>Chains that showed no rate, by reason.</summary>
    public required IReadOnlyDictionary<NoRateReason, int> ChainsSkipped { get; init; }

    /// <summary>Number of folds of the cross-validation.</summary>
    public required int Folds { get; init; }

    /// <summary>Cross-validated error of ln rate when every chain is expected to wear like the average.</summary>
    public required double MeanOnlyError { get; init; }

    /// <summary>Cross-validated error of ln rate of the log-linear part alone.</summary>
    public required double LineError { get; init; }

    /// <summary>
    /// Cross-validated error of ln rate with trees on top of that; null when the fleet is too small to grow any, or the processor
    /// lacks their library.
    /// </summary>
    public required double? LineAndTreesError { get; init; }

    /// <summary>Whether the trees won clearly enough to be used.</summary>
    public required bool UsesTrees { get; init; }

    /// <summary>Standard deviation of ln rate between chains that are alike on their cards.</summary>
    public required double Tau { get; init; }

    /// <summary>Standard deviation of ln rate between lines; zero when they do not differ beyond their cards.</summary>
    public required double LineDeviation { get; init; }

    /// <summary>Standard deviation of ln rate between supplier's lots; zero when they do not differ, or none are told.</summary>
    public double LotDeviation { get; init; }

    /// <summary>
    /// How far off unseen chains lay over what the log-linear part said, in variances; near 1 when it is honest.
    /// </summary>
    public required double SpreadOverExpected { get; init; }

    /// <summary>
    /// Half the width of the interval of ln rate that holds 90 % of further chains, from the unseen chains' errors.
    /// </summary>
    public required double ConformalHalfWidth90 { get; init; }

    /// <summary>What was learned, column by column; the first is the average chain.</summary>
    public required IReadOnlyList<LearnedEffect> Effects { get; init; }

    /// <summary>Inputs that had to earn their place, and whether they did; none where no chain tells of them.</summary>
    public IReadOnlyList<InputTrial> Trials { get; init; } = [];

    /// <summary>Error against the number of chains learned from.</summary>
    public required IReadOnlyList<LearningPoint> LearningCurve { get; init; }
}
