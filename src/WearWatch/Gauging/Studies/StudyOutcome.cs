namespace WearWatch.Gauging.Studies;

/// <summary>Whether readings make a study.</summary>
public abstract record StudyOutcome
{
    private StudyOutcome()
    {
    }

    /// <summary>They do.</summary>
    /// <param name="Study">The study.</param>
    public sealed record Balanced(CrossedStudy Study) : StudyOutcome;

    /// <summary>They do not.</summary>
    /// <param name="Reason">What is missing.</param>
    public sealed record Refused(string Reason) : StudyOutcome;
}
