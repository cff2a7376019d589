using WearWatch.Chains;
using WearWatch.Phrases;
using WearWatch.Wear;

namespace WearWatch.Lifting.Examinations;

/// <summary>All that a lifting chain's state is concluded from.</summary>
public sealed record LiftingFacts
{
    /// <summary>The chain.</summary>
    public required ChainCard Card { get; init; }

    /// <summary>Its entry in the register of lifting chains; null for none.</summary>
    public required LiftingEntry? Entry { get; init; }

    /// <summary>Whose law the plant stands under.</summary>
    public required LawRegion PlantsRegion { get; init; }

    /// <summary>When the chain that runs now replaced another; null where no replacement is recorded.</summary>
    public required DateTimeOffset? ReplacedAt { get; init; }

    /// <summary>All that was found on it, by looks and at examinations.</summary>
    public required IReadOnlyList<LiftingFinding> Found { get; init; }

    /// <summary>Its thorough examinations.</summary>
    public required IReadOnlyList<Examination> Examinations { get; init; }

    /// <summary>What people did about its use.</summary>
    public required IReadOnlyList<LiftingStep> Steps { get; init; }

    /// <summary>The condition by elongation.</summary>
    public required Condition Wear { get; init; }

    /// <summary>When it is out of use by wear, whatever the forecast says; null for none.</summary>
    public DateTimeOffset? OutOfUseBy { get; init; }

    /// <summary>The condition by the measures of its links; not known for a chain without.</summary>
    public Condition Links { get; init; }

    /// <summary>The worst of those measures in a sentence, or empty.</summary>
    public Phrase LinksSaid { get; init; } = Phrase.None;

    /// <summary>What is said of a reading in doubt that would take it out of use, or empty.</summary>
    public Phrase ReadingInDoubt { get; init; } = Phrase.None;

    /// <summary>The other chains of its set that are condemned.</summary>
    public IReadOnlyList<string> CondemnedMates { get; init; } = [];

    /// <summary>The other chains of its set that were replaced, with when.</summary>
    public IReadOnlyList<(string Name, DateTimeOffset At)> ReplacedMates { get; init; } = [];

    /// <summary>When it was last looked at.</summary>
    public DateTimeOffset? LookedAt { get; init; }

    /// <summary>When its wear was last measured.</summary>
    public DateTimeOffset? MeasuredAt { get; init; }

    /// <summary>What turns a moment into the plant's day.</summary>
    public required TimeZoneInfo Zone { get; init; }

    /// <summary>The plant's day at a moment.</summary>
    public DateOnly DayOf(DateTimeOffset at) => DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(at, Zone).DateTime);
}
