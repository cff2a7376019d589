using WearWatch.Phrases;

namespace WearWatch.Rounds;

/// <summary>What a person does at a stop of a round.</summary>
public enum RoundTaskKind
{
    /// <summary>Measure the chain.</summary>
    Measure,

    /// <summary>Oil it, or look at its oiler.</summary>
    Lubricate,

    /// <summary>Look at it.</summary>
    Inspect,
}

/// <summary>Something to do at a stop, with when and why.</summary>
/// <param name="Kind">What.</param>
/// <param name="DueAt">When it falls due; null when it cannot be said.</param>
/// <param name="Why">Why then, in words for the screen.</param>
public sealed record RoundTask(RoundTaskKind Kind, DateTimeOffset? DueAt, Phrase Why)
{
    /// <summary>Whether it is due before a moment, such as the end of the day.</summary>
    public bool IsDueBefore(DateTimeOffset moment) => DueAt < moment;
}
