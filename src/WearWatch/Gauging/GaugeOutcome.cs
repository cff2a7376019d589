using WearWatch.Phrases;

namespace WearWatch.Gauging;

/// <summary>What the gauge makes of a length.</summary>
public abstract record GaugeOutcome
{
    private GaugeOutcome()
    {
    }

    /// <summary>An elongation that a chain can have.</summary>
    /// <param name="Elongation">The elongation.</param>
    public sealed record Measured(Elongation Elongation) : GaugeOutcome;

    /// <summary>A length that a chain hardly has: it is kept, and waits for a person's yes or correction.</summary>
    /// <param name="Elongation">What it would be.</param>
    /// <param name="Reason">Why it is doubted, for the person who entered it.</param>
    public sealed record Doubted(Elongation Elongation, Phrase Reason) : GaugeOutcome;

    /// <summary>Not a measurement at all.</summary>
    /// <param name="Field">
    /// Which of the inputs is wrong, in the words of the file format (<c>pitches</c>, <c>length</c>, ...).
    /// </param>
    /// <param name="Reason">What is wrong with it and what would do.</param>
    public sealed record Refused(string Field, Phrase Reason) : GaugeOutcome;
}
