using WearWatch.Phrases;

namespace WearWatch.Entries;

/// <summary>A slip that would explain a reading that does not fit.</summary>
/// <param name="Kind">What may have gone wrong.</param>
/// <param name="Probability">
/// How likely it is, given the reading; with all the others and an honest reading it adds up to one.
/// </param>
/// <param name="ElongationPercent">The elongation when it is corrected so, in percent.</param>
/// <param name="Words">What it was, for the person who entered it.</param>
public sealed record Slip(SlipKind Kind, double Probability, double ElongationPercent, Phrase Words)
{
    /// <summary>The number of pitches when it is corrected so.</summary>
    public required int Pitches { get; init; }

    /// <summary>The length in millimetres when it is corrected so.</summary>
    public required double LengthMm { get; init; }

    /// <summary>The hour counter when it is corrected so; null when none was told.</summary>
    public double? CounterH { get; init; }

    /// <summary>The time when it is corrected so; null when none was told.</summary>
    public DateTimeOffset? TakenAt { get; init; }

    /// <summary>The chain whose reading it is then.</summary>
    public required string Chain { get; init; }
}
