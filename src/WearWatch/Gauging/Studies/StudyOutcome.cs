using WearWatch.Phrases;

namespace WearWatch.Gauging.Studies;

/// <summary>Whether readings make a study.</summary>
public abstract record StudyOutcome
{
    private StudyOutcome()
    {
    }

    /// <summary>Every person measured every section as often: the readings make a study.</summary>
    /// <param name="Study">The study.</param>
    public sealed record Balanced(CrossedStudy Study) : StudyOutcome;

    /// <summary>The readings make no study.</summary>
    /// <param name="Reason">What is missing, in plain words.</param>
    public sealed record Refused(Phrase Reason) : StudyOutcome;
}
