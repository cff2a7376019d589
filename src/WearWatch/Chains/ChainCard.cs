using WearWatch.Running;

namespace WearWatch.Chains;

/// <summary>What a plant knows of a chain before anything is measured: where it runs, what it is and what it has to stand.</summary>
/// <remarks>
/// The name stays with the position's chain over replacements: a replacement is an event, and what runs after it is another
/// fitted chain under the same name (see <see cref="Wear.ChainHistory"/>).
/// </remarks>
public sealed record ChainCard
{
    /// <summary>The name that stands on the label and in the files.</summary>
    public required string Name { get; init; }

    /// <summary>The production line, or empty.</summary>
    public string Line { get; init; } = "";

    /// <summary>Where on the line, or empty.</summary>
    public string Position { get; init; } = "";

    /// <summary>The chain type's designation, such as <c>16B-1</c>, or empty when only the pitch is known.</summary>
    public string ChainType { get; init; } = "";

    /// <summary>The kind of chain.</summary>
    public ChainFamily Family { get; init; } = ChainFamily.Roller;

    /// <summary>Nominal pitch in millimetres.</summary>
    public required double PitchMm
    {
        get;
        init => field = value is > 0 and <= 2000
            ? value
            : throw new ArgumentOutOfRangeException(nameof(value), value, "A pitch lies above 0 and at most at 2,000 mm.");
    }

    /// <summary>Length of the whole chain in pitches.</summary>
    public int? Pitches { get; init; }

    /// <summary>Teeth of the sprockets; the largest sets a limit of 200/N percent.</summary>
    public IReadOnlyList<int> SprocketTeeth { get; init; } = [];

    /// <summary>When the first recorded chain was fitted here.</summary>
    public DateTimeOffset? FittedAt { get; init; }

    /// <summary>The hour counter when the first recorded chain was fitted; null when its fitting is not recorded.</summary>
    public RunningHours? FittedCounter { get; init; }

    /// <summary>The replacement limit that the plant set itself, in percent; null leaves it to the rules.</summary>
    public double? LimitPercent
    {
        get;
        init => field = value is null or (> 0 and < 10)
            ? value
            : throw new ArgumentOutOfRangeException(nameof(value), value, "A replacement limit lies between 0 and 10 %.");
    }

    /// <summary>What the chain has to stand.</summary>
    public Duty Duty { get; init; } = new();
}
