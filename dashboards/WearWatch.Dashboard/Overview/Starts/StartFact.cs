namespace WearWatch.Dashboard.Overview.Starts;

/// <summary>A figure of a start page.</summary>
/// <param name="Figure">The figure, or a date.</param>
/// <param name="Words">What it counts.</param>
/// <param name="Link">The page that shows what it counts.</param>
public sealed record StartFact(string Figure, Phrase Words, string Link)
{
    /// <summary>What else is to be known of it; empty for nothing.</summary>
    public Phrase Under { get; init; } = Phrase.None;

    /// <summary>Whether somebody has to do something today.</summary>
    public bool Urgent { get; init; }
}
