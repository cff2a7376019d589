using WearWatch.Chains.Families;
using WearWatch.Chains.Links;
using WearWatch.Running;

namespace WearWatch.Chains;

/// <summary>
/// What a plant knows of a chain before anything is measured: where it runs, what it is and what it has to stand.
/// </summary>
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
    public ChainFamily Family { get; init; } = ChainFamily.Usual;

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
    public IReadOnlyList<int> SprocketTeeth
    {
        get;
        init => field = value.All(teeth => teeth is >= 5 and <= 1000)
            ? value
            : throw new ArgumentOutOfRangeException(nameof(value), string.Join(", ", value), "A sprocket has 5 to 1,000 teeth.");
    } = [];

    /// <summary>When the first recorded chain was fitted here.</summary>
    public DateTimeOffset? FittedAt { get; init; }

    /// <summary>The hour counter when the first recorded chain was fitted; null when its fitting is not recorded.</summary>
    public RunningHours? FittedCounter { get; init; }

    /// <summary>
    /// The supplier's lot of the first recorded chain, as it stood on its tag, or empty; a replacement tells its own.
    /// </summary>
    public string Lot { get; init; } = "";

    /// <summary>The replacement limit that the plant set itself, in percent; null leaves it to the rules.</summary>
    public double? LimitPercent
    {
        get;
        init => field = value is null or (> 0 and < 10)
            ? value
            : throw new ArgumentOutOfRangeException(nameof(value), value, "A replacement limit lies between 0 and 10 %.");
    }

    /// <summary>Why the plant set its own limit, as the person who set it told; or empty.</summary>
    public string LimitSetReason { get; init; } = "";

    /// <summary>More strands than this no chain has.</summary>
    public const int MostStrands = 24;

    /// <summary>
    /// Strands of a multi-strand chain on common pins, such as 3 for a <c>16B-3</c>: where its type names them, they are its.
    /// </summary>
    public int Strands
    {
        get => ChainCatalogue.StrandsNamed(ChainType) ?? field;
        init => field = value is >= 1 and <= MostStrands
            ? value
            : throw new ArgumentOutOfRangeException(nameof(value), value, "A chain has 1 to 24 strands.");
    } = 1;

    /// <summary>Whether the centres are fixed, so that nothing takes up the slack.</summary>
    public bool FixedCentres { get; init; }

    /// <summary>Whether it runs side by side with another chain that must stay alike.</summary>
    public bool RunsInParallel { get; init; }

    /// <summary>Whether it is an engine's timing chain.</summary>
    public bool Timing { get; init; }

    /// <summary>Whether it positions something or keeps two shafts in step.</summary>
    public bool Positioning { get; init; }

    /// <summary>Whether it is a high-performance drive.</summary>
    public bool HighPerformance { get; init; }

    /// <summary>Whether its card says that it lifts or holds a load; <see cref="HoldsLoad"/> knows its kind, too.</summary>
    public bool Lifts { get; init; }

    /// <summary>
    /// Why it lifts and holds nothing although its kind does, such as a round-link chain of a bucket elevator, in a planner's
    /// words; empty where nobody said so. A leaf chain always lifts.
    /// </summary>
    public string NotLiftingReason { get; init; } = "";

    /// <summary>Whether it lifts or holds a load, by its card or by its kind: the one question that is asked.</summary>
    public bool HoldsLoad => Family.Lifts(Lifts, NotLiftingReason.Length > 0);

    /// <summary>Whether pitches may be taken out of it to make up for wear.</summary>
    public bool MayBeShortened => Family.Shortens(HoldsLoad);

    /// <summary>What was copied from the maker's table of a round-link chain.</summary>
    public LinkTableEntry LinkEntry { get; init; } = LinkTableEntry.None;

    /// <summary>Distance of the two shafts in millimetres.</summary>
    public double? CentreDistanceMm
    {
        get;
        init => field = value is null or > 0
            ? value
            : throw new ArgumentOutOfRangeException(nameof(value), value, "A centre distance lies above 0.");
    }

    /// <summary>How far the take-up can move a shaft from where a new chain is taut, in millimetres.</summary>
    public double? TakeUpTravelMm
    {
        get;
        init => field = value is null or >= 0
            ? value
            : throw new ArgumentOutOfRangeException(nameof(value), value, "A travel of the take-up is not negative.");
    }

    /// <summary>
    /// By how much it may differ in length from the chains that run together with it, in millimetres, as the plant set it; null
    /// where it has not.
    /// </summary>
    public double? GroupDifferenceMm
    {
        get;
        init => field = value is null or > 0
            ? value
            : throw new ArgumentOutOfRangeException(nameof(value), value, "A difference of length lies above 0.");
    }

    /// <summary>What is laid out for its next swap besides pitches and links.</summary>
    public SpareKit Kit { get; init; } = SpareKit.None;

    /// <summary>
    /// The plant's own interval between two oilings (or looks at the oiler) in running hours; null leaves it to the handbook.
    /// </summary>
    public double? OilingIntervalHours
    {
        get;
        init => field = value is null or (> 0 and <= 100_000)
            ? value
            : throw new ArgumentOutOfRangeException(nameof(value), value,
                "A lubrication interval lies above 0 and at most at 100,000 h.");
    }

    /// <summary>
    /// What the surroundings make of the handbook's oiling interval: 0.5 halves it. No published factor was found.
    /// </summary>
    public double OilingSurroundingsFactor
    {
        get;
        init => field = value is >= 0.05 and <= 20
            ? value
            : throw new ArgumentOutOfRangeException(nameof(value), value,
                "A factor for the surroundings lies between 0.05 and 20.");
    } = 1;

    /// <summary>What its place asks of its oil.</summary>
    public OilPlace OilPlace { get; init; }

    /// <summary>Of what it is made.</summary>
    public ChainMaterial Material { get; init; }

    /// <summary>How oil is brought to it; null when it is not recorded.</summary>
    public OilMethod? OilMethod { get; init; }

    /// <summary>The oil that the plant uses here, or empty: then the tables say which.</summary>
    public string OilGrade { get; init; } = "";

    /// <summary>What the chain has to stand.</summary>
    public Duty Duty { get; init; } = new();
}
