using WearWatch.Chains.Families;

namespace WearWatch.Chains;

/// <summary>What decides at which elongation a chain is to be replaced.</summary>
public sealed record LimitCase
{
    /// <summary>The kind of chain.</summary>
    public ChainFamily Family { get; init; } = ChainFamily.Usual;

    /// <summary>Teeth of the sprockets; the largest counts. Empty when not known.</summary>
    public IReadOnlyList<int> SprocketTeeth
    {
        get;
        init => field = value.All(teeth => teeth is >= 5 and <= 1000)
            ? value
            : throw new ArgumentOutOfRangeException(nameof(value), string.Join(", ", value), "A sprocket has 5 to 1,000 teeth.");
    } = [];

    /// <summary>Whether the centres are fixed, so that nothing takes up the slack.</summary>
    public bool FixedCentres { get; init; }

    /// <summary>Whether it runs side by side with another chain that must stay alike.</summary>
    public bool Parallel { get; init; }

    /// <summary>Whether it is an engine's timing chain.</summary>
    public bool Timing { get; init; }

    /// <summary>Whether it positions something or keeps two shafts in step.</summary>
    public bool Positioning { get; init; }

    /// <summary>Whether it is a high-performance drive.</summary>
    public bool HighPerformance { get; init; }

    /// <summary>Whether it lifts or holds a load.</summary>
    public bool Lifts { get; init; }

    /// <summary>
    /// How far the take-up can move a shaft from where a new chain is taut, in millimetres; null when not known.
    /// </summary>
    public double? TakeUpTravelMm { get; init; }

    /// <summary>
    /// How much sooner than by its elongation the take-up ends, in millimetres of its travel; see <see cref="TakeUpEnd"/>.
    /// </summary>
    public double TakeUpAheadMm { get; init; }

    /// <summary>Length of the whole chain in pitches; null when not known.</summary>
    public int? ChainPitches { get; init; }

    /// <summary>Pitches taken out of it since it was fitted, so that the take-up could be set back.</summary>
    public int PitchesOut { get; init; }

    /// <summary>Nominal pitch in millimetres; null when not known.</summary>
    public double? PitchMm { get; init; }

    /// <summary>The limit by the hoist maker's own table, which goes before a general one; null where none was entered.</summary>
    public ReplacementLimit? ByMakersTable { get; init; }

    /// <summary>The case of a chain at its position.</summary>
    public static LimitCase Of(ChainCard card) => new()
    {
        Family = card.Family,
        SprocketTeeth = card.SprocketTeeth,
        FixedCentres = card.FixedCentres,
        Parallel = card.RunsInParallel,
        Timing = card.Timing,
        Positioning = card.Positioning,
        HighPerformance = card.HighPerformance,
        Lifts = card.HoldsLoad,
        TakeUpTravelMm = card.TakeUpTravelMm,
        ChainPitches = card.Pitches,
        PitchMm = card.PitchMm,
        ByMakersTable = card.Links?.AsElongation,
    };
}
