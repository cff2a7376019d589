using WearWatch.Lives;

namespace WearWatch.Dashboard.Engineer.LifeData;

/// <summary>How well a law fits, in a sentence.</summary>
public static class FitWords
{
    public static Phrase Of(FitJudgement judgement) => !judgement.CanTell
        ? $"Too few failures to judge the fit: {judgement.Moments} of {FitJudgement.FewestFailures}."
        : Phrase.Join(" ", [Band(judgement), Other(judgement)]);

    private static Phrase Band(FitJudgement judgement) => (judgement.Fits, judgement.OutsideFromHours) switch
    {
        (true, _) => $"It fits: at {judgement.Moments - judgement.Outside} of {judgement.Moments} failures the line "
            + $"lies in the 90 % band.",
        (false, { } hours) => $"It does not fit: at {judgement.Outside} of {judgement.Moments} failures the line leaves "
            + $"the 90 % band, first at {hours:#,0} h.",
        _ => Phrase.None,
    };

    private static Phrase Other(FitJudgement judgement)
    {
        if (judgement.LogRatio is not { } ratio) return Phrase.None;
        Phrase other = judgement.Law == LifeLaw.Weibull ? Phrase.Of($"lognormal") : $"Weibull";
        if (judgement.OtherIsBetter) return $"The {other} distribution fits better: {Math.Exp(-ratio):#,0} times as likely.";
        return ratio > FitJudgement.TellingLogRatio
            ? Phrase.Of($"The {other} distribution fits less well: {Math.Exp(ratio):#,0} times less likely.")
            : $"The {other} distribution fits about as well.";
    }
}
