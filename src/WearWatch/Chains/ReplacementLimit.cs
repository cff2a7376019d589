namespace WearWatch.Chains;

/// <summary>Why a limit is what it is.</summary>
public enum LimitReason
{
    /// <summary>The general limit of the chain's kind.</summary>
    General,

    /// <summary>The largest sprocket: a long chain climbs its teeth, the sooner the more teeth it has.</summary>
    SprocketTeeth,

    /// <summary>Fixed centres: nothing takes up the slack.</summary>
    FixedCentres,

    /// <summary>Chains that run in parallel and must stay alike.</summary>
    ParallelStrands,

    /// <summary>What is left of the take-up's travel.</summary>
    TakeUpTravel,

    /// <summary>Timing or positioning.</summary>
    Timing,

    /// <summary>A chain that lifts.</summary>
    Lifting,

    /// <summary>The plant set it itself.</summary>
    SetByPlant,
}

/// <summary>The elongation at which a chain is to be replaced, and what says so.</summary>
/// <param name="Percent">The elongation in percent.</param>
/// <param name="Reason">The rule that governs.</param>
/// <param name="Source">Who says so: a numbered source of docs/references.md, a standard, <c>common practice</c> or the plant.</param>
public sealed record ReplacementLimit(double Percent, LimitReason Reason, string Source)
{
    /// <summary>The general limit of a roller chain on an adjustable drive.</summary>
    public const double GeneralPercent = 3.0;

    /// <summary>The limit of a roller chain: <c>min(3, 200/N)</c> percent, N the teeth of the largest sprocket.</summary>
    /// <remarks>Source: docs/references.md [8], [9]. One of the pages prints (2.00/N) %, which is the fraction, not the percent.</remarks>
    public static ReplacementLimit ForTeeth(IReadOnlyCollection<int> sprocketTeeth)
    {
        var byTeeth = sprocketTeeth.Count > 0 ? 200.0 / sprocketTeeth.Max() : double.PositiveInfinity;
        return byTeeth < GeneralPercent
            ? new ReplacementLimit(byTeeth, LimitReason.SprocketTeeth, "docs/references.md [8]")
            : new ReplacementLimit(GeneralPercent, LimitReason.General, "docs/references.md [8], [9], [10]");
    }

    /// <summary>The limit that governs a chain: the plant's own where it set one, else the rules.</summary>
    public static ReplacementLimit For(ChainCard card) => card.LimitPercent is { } own
        ? new ReplacementLimit(own, LimitReason.SetByPlant, "set by the plant")
        : ForTeeth(card.SprocketTeeth);
}
