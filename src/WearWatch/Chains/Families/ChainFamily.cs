using System.Reflection;
using WearWatch.Chains.Parts;
using WearWatch.Phrases;
using WearWatch.Units;

namespace WearWatch.Chains.Families;

/// <summary>A kind of chain, with its answer to all that is asked of one: how it is measured, limited, oiled, swapped.</summary>
/// <remarks>
/// The set is closed: one class a file in this folder, found by reflection. Nothing outside of the folder names a kind or
/// decides by which one it is; it asks. Every question is abstract, so that a kind that leaves one open does not compile.
/// What carries no source is common practice.
/// </remarks>
public abstract class ChainFamily
{
    /// <summary>Only the kinds of this folder are chains.</summary>
    private protected ChainFamily()
    {
    }

    /// <summary>Every kind, in the order of lists.</summary>
    public static IReadOnlyList<ChainFamily> All { get; } =
    [
        .. Assembly.GetExecutingAssembly().GetTypes().Where(type => type.IsSubclassOf(typeof(ChainFamily)) && !type.IsAbstract)
            .Select(type => (ChainFamily)Activator.CreateInstance(type)!).OrderBy(family => family.Place),
    ];

    /// <summary>The commonest kind, taken where none is told.</summary>
    public static ChainFamily Usual { get; } = All.OfType<RollerChain>().Single();

    /// <summary>Its name in files, in JSON and in the memory, such as <c>double_pitch</c>; never changed once used.</summary>
    public abstract string Name { get; }

    /// <summary>What stands before the word chain on a screen, such as <c>double-pitch</c>.</summary>
    public abstract Phrase Words { get; }

    /// <summary>Whether it is the commonest kind.</summary>
    public bool IsUsual => this == Usual;

    /// <summary>Where it stands in lists, and among the columns of the fleet model; no two kinds stand at one place.</summary>
    public abstract int Place { get; }

    /// <summary>Whether every chain of the kind lifts or holds a load, whatever anybody says.</summary>
    public abstract bool AlwaysLifts { get; }

    /// <summary>Whether a chain of the kind lifts or holds a load unless a planner has said why it does not.</summary>
    public abstract bool LiftsByNature { get; }

    /// <summary>Whether pitches may ever be taken out to make up for wear; out of a chain that lifts never.</summary>
    public abstract bool MayBeShortened { get; }

    /// <summary>Whether it can be closed at an odd number of pitches: by an offset link, or since all links are alike.</summary>
    public abstract bool ClosesAtOdd { get; }

    /// <summary>Whether the teeth of its largest wheel limit it, because a long chain climbs them.</summary>
    public abstract bool RunsOnTeeth { get; }

    /// <summary>
    /// Whether the limits of fixed centres and of chains that run in parallel are meant for it: they were read for drives of
    /// roller chain, docs/references.md [8]. Of others the plant sets its own, or the difference of their lengths counts.
    /// </summary>
    public abstract bool RollerDriveLimitsHold { get; }

    /// <summary>Between which points of the chain its length is taken.</summary>
    public abstract MeasuredPoints Measured { get; }

    /// <summary>Whether inner and outer links alternate: only every other pitch grows, and an even number is measured.</summary>
    public abstract bool LinksAlternate { get; }

    /// <summary>Over how many pitches it is measured.</summary>
    public abstract SpanRule Span { get; }

    /// <summary>Which stretch of the chain to measure, in a sentence.</summary>
    public abstract Phrase WhereToMeasure { get; }

    /// <summary>How to measure it, a sentence a step.</summary>
    public abstract IReadOnlyList<Phrase> HowToMeasure { get; }

    /// <summary>How much longer than nominal a new chain may be, in percent, where its type does not say.</summary>
    public abstract Sourced NewLengthTolerancePercent { get; }

    /// <summary>The limit of the kind before its drive and its duty are looked at.</summary>
    public abstract ReplacementLimit GeneralLimit { get; }

    /// <summary>The limit of a chain of the kind that lifts or holds a load, where nothing stricter holds.</summary>
    public abstract ReplacementLimit LiftingLimit { get; }

    /// <summary>Whether <see cref="GeneralLimit"/> holds only where nothing else does, since it is meant for any chain.</summary>
    public abstract bool GeneralLimitGivesWay { get; }

    /// <summary>Figures of the trade for this kind that are told and do not bind.</summary>
    public abstract IReadOnlyList<ReplacementLimit> LimitAdvice { get; }

    /// <summary>What of it and its wheels is measured beside the length, with the trade's limit where one was read.</summary>
    public abstract IReadOnlyList<PartRule> PartRules { get; }

    /// <summary>Whether the wear law of drives holds, so that a rate can be expected from a drive's figures.</summary>
    public abstract bool HasExpectedWear { get; }

    /// <summary>Cautions of the kind alone, most urgent first; those for all chains and for lifting are not among them.</summary>
    public abstract IReadOnlyList<Phrase> Cautions { get; }

    /// <summary>What it takes to swap one, until the plant sets its own.</summary>
    public abstract SwapWork UsualSwap { get; }

    /// <summary>What props it during a swap, for the list of tools.</summary>
    public abstract Phrase PropAtSwap { get; }

    /// <summary>How the new chain is drawn in and closed, as a step of the job card.</summary>
    public abstract Phrase ClosingStep { get; }

    /// <summary>Where and how to measure, in the order in which it is done.</summary>
    public IReadOnlyList<Phrase> MeasuringSteps =>
        [WhereToMeasure, .. HowToMeasure, $"Two or three lengths at one place tell more than one."];

    /// <summary>The kind of that name; null for none or another. Case and the marks between words do not matter.</summary>
    public static ChainFamily? Find(string? name) =>
        name is null ? null : All.FirstOrDefault(family => Plain(family.Name) == Plain(name));

    /// <summary>The kind of that name.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No kind has this name.</exception>
    public static ChainFamily Named(string name) =>
        Find(name) ?? throw new ArgumentOutOfRangeException(nameof(name), name, "No kind of chain has this name.");

    /// <summary>What is looked at, in the order in which one walks around it.</summary>
    /// <param name="lifts">Whether it lifts or holds a load.</param>
    public abstract IReadOnlyList<CheckPoint> CheckPoints(bool lifts);

    /// <summary>What to say about the wheels when a chain is swapped.</summary>
    /// <param name="elongationPercent">Its elongation in percent; null when it is not known.</param>
    /// <param name="chainsOnTheseSprockets">How many chains, this one included, have run on them; null when not recorded.</param>
    public abstract Phrase SprocketAdvice(double? elongationPercent = null, int? chainsOnTheseSprockets = null);

    /// <summary>
    /// The pitch under which the tables of roller drives list its joints, in millimetres; null where they are not meant for it.
    /// </summary>
    /// <param name="pitchMm">Its own pitch.</param>
    public abstract double? OilTablePitchMm(double pitchMm);

    /// <summary>How often it is oiled by hand, in running hours, where it lifts nothing.</summary>
    public abstract Sourced OiledByHandHours { get; }

    /// <summary>The oil for a temperature of the surroundings; null where no table covers it.</summary>
    public abstract OilGrade? OilFor(Temperature ambient);

    /// <summary>How often one that lifts or holds a load is oiled at the latest; null where no source says.</summary>
    public abstract OilingOfLifting? OilingWhenLifting { get; }

    /// <summary>What is cut from the pack, and the links that close it.</summary>
    /// <param name="pitches">Length of the whole chain in pitches; above zero.</param>
    public abstract ChainCut Cut(int pitches);

    /// <summary>How a chain of so many pitches is made up; one that holds a load comes whole, as it was certified.</summary>
    /// <param name="pitches">Its pitches.</param>
    /// <param name="holdsLoad">Whether it lifts or holds a load.</param>
    public ChainCut CutFor(int pitches, bool holdsLoad) => holdsLoad ? ChainCut.Whole(pitches) : Cut(pitches);

    /// <summary>Whether a chain of this kind lifts or holds a load.</summary>
    /// <param name="told">Whether its card says so.</param>
    /// <param name="toldNot">Whether a planner has said why it does not.</param>
    public bool Lifts(bool told, bool toldNot = false) => AlwaysLifts || told || (LiftsByNature && !toldNot);

    /// <summary>Whether pitches may be taken out of a chain of this kind.</summary>
    /// <param name="lifts">Whether it lifts or holds a load.</param>
    public bool Shortens(bool lifts) => MayBeShortened && !Lifts(lifts);

    /// <summary>What to say about the wheels, and about what hangs with the chain, when it is replaced.</summary>
    /// <param name="lifts">Whether it lifts or holds a load.</param>
    /// <param name="elongationPercent">Its elongation in percent; null when it is not known.</param>
    /// <param name="chainsOnTheseSprockets">How many chains, this one included, have run on them; null when not recorded.</param>
    public Phrase WheelAdvice(bool lifts, double? elongationPercent = null, int? chainsOnTheseSprockets = null) =>
        Lifts(lifts, !lifts) ? LiftingPoints.AtReplacement : SprocketAdvice(elongationPercent, chainsOnTheseSprockets);

    /// <summary>The point of the checklist; null where this kind has none such.</summary>
    /// <param name="point">What is looked at.</param>
    /// <param name="lifts">Whether it lifts or holds a load.</param>
    public CheckPoint? CheckPoint(InspectionPoint point, bool lifts) => CheckPoints(lifts).FirstOrDefault(p => p.Point == point);

    /// <summary>Its name.</summary>
    public sealed override string ToString() => Name;

    private static string Plain(string name) => string.Concat(name.Where(char.IsLetterOrDigit)).ToUpperInvariant();
}
