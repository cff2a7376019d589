using WearWatch.Lives;

namespace WearWatch.Dashboard.Engineer.LifeData;

/// <summary>The lives of one group of chains and what they tell.</summary>
public sealed record GroupOfLives
{
    /// <summary>The confidence of every interval on this page.</summary>
    public const double Confidence = 0.90;

    public required string Name { get; init; }

    public required IReadOnlyCollection<Life> Lives { get; init; }

    public required SurvivalCurve Curve { get; init; }

    public required LifeFitOutcome Outcome { get; init; }

    /// <summary>The fitted law; null where there is none to fit.</summary>
    public LifeFit? Fit => (Outcome as LifeFitOutcome.Fitted)?.Fit;

    public required ConfidenceInterval? SteepnessInterval { get; init; }

    public required ConfidenceInterval? B10Interval { get; init; }

    public required ConfidenceInterval? MedianInterval { get; init; }

    /// <summary>
    /// The law with suspended lives counted by what their wear foretold; null where no such life was read, or it cannot be
    /// fitted.
    /// </summary>
    public required ImputedLives? FromWear { get; init; }

    /// <summary>
    /// Whether more lives ended by an early swap than at the limit: then the plain estimate takes nearly worn chains for
    /// long-lived.
    /// </summary>
    public bool MostlySwappedEarly => ReplacedBefore > Failures;

    /// <summary>How well the law fits; null where there is none to fit.</summary>
    public required FitJudgement? Judgement { get; init; }

    public int Failures => Curve.Failures;

    public int ReplacedBefore => Lives.Count(l => l.End == LifeEnd.ReplacedBefore);

    public int StillRunning => Lives.Count(l => l.End == LifeEnd.StillRunning);

    public static GroupOfLives Of(string name, IReadOnlyCollection<Life> lives, LifeLaw law)
    {
        var outcome = LifeFit.To(lives, law);
        var fit = (outcome as LifeFitOutcome.Fitted)?.Fit;
        return new GroupOfLives
        {
            Name = name,
            Lives = lives,
            Curve = SurvivalCurve.Of(lives),
            Outcome = outcome,
            Judgement = fit is null ? null : FitJudgement.Of(fit, lives),
            FromWear = ImputedLives.Of(lives, law),
            SteepnessInterval = fit?.SteepnessInterval(Confidence),
            B10Interval = fit?.HoursInterval(0.10, Confidence),
            MedianInterval = fit?.HoursInterval(0.50, Confidence),
        };
    }
}
