namespace WearWatch.Lives;

/// <summary>How well a law fits the lives that it was fitted to.</summary>
/// <remarks>
/// Two things are judged. Where the law leaves the pointwise band of Kaplan and Meier at moments of failure: of a law that fits,
/// a band of 90 % leaves out one in ten. And the likelihood ratio against the other law: both have two parameters, so the one
/// with the greater likelihood fits better (docs/references.md [15], from memory).
/// </remarks>
public sealed record FitJudgement
{
    /// <summary>Confidence of the band.</summary>
    public const double Confidence = 0.90;

    /// <summary>Fewer failures than this say nothing of how well a law fits.</summary>
    public const int FewestFailures = 5;

    /// <summary>A difference of ln L below this is none: the one is less than e^2, 7.4, times as likely as the other.</summary>
    public const double TellingLogRatio = 2;

    /// <summary>The law that was fitted.</summary>
    public required LifeLaw Law { get; init; }

    /// <summary>Moments of failure at which there is a band.</summary>
    public required int Moments { get; init; }

    /// <summary>Those of them at which the law lies outside of it.</summary>
    public required int Outside { get; init; }

    /// <summary>From which hours the law lies outside first; null where it nowhere does.</summary>
    public required double? OutsideFromHours { get; init; }

    /// <summary>ln L of the law less ln L of the other; null where the other cannot be fitted.</summary>
    public required double? LogRatio { get; init; }

    /// <summary>Whether there are enough failures to judge by.</summary>
    public bool CanTell => Moments >= FewestFailures;

    /// <summary>Whether the law leaves the band more often than a law that fits.</summary>
    public bool Fits => Outside <= Math.Ceiling((1 - Confidence) * Moments);

    /// <summary>Whether the other law fits clearly better.</summary>
    public bool OtherIsBetter => LogRatio < -TellingLogRatio;

    /// <summary>Judges a fit.</summary>
    public static FitJudgement Of(LifeFit fit, IReadOnlyCollection<Life> lives)
    {
        var curve = SurvivalCurve.Of(lives);
        var moments = curve.Steps.Zip(curve.Band(BandKind.LogLog, Confidence))
            .Where(m => m.First.Failed > 0 && !double.IsNaN(m.Second.Low)).ToList();
        var outside = moments.FindAll(m => !m.Second.Contains(1 - fit.ShareFailedAt(m.First.Hours)));
        var other = LifeFit.To(lives, fit.Law == LifeLaw.Weibull ? LifeLaw.Lognormal : LifeLaw.Weibull);
        return new FitJudgement
        {
            Law = fit.Law,
            Moments = moments.Count,
            Outside = outside.Count,
            OutsideFromHours = outside.Count > 0 ? outside[0].First.Hours : null,
            LogRatio = other is LifeFitOutcome.Fitted fitted ? fit.LogLikelihood - fitted.Fit.LogLikelihood : null,
        };
    }
}
