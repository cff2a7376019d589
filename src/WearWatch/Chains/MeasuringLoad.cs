using WearWatch.Phrases;

namespace WearWatch.Chains;

/// <summary>
/// The pull under which a chain's length is measured by the standards, so that its joints lie against each other.
/// </summary>
/// <remarks>In place, taut and unloaded the error is small over 20 to 40 links: docs/references.md [10].</remarks>
public static class MeasuringLoad
{
    /// <summary>
    /// One percent of the smallest tensile strength. Sources: docs/references.md [5], [7]; leaf chain about as much [30].
    /// </summary>
    public const double ShareOfTensile = 0.01;

    /// <summary>The least for the smallest chains, 18 lbf. Source: docs/references.md [5].</summary>
    public const double LeastNewtons = 80;

    /// <summary>The measuring force of a chain type in newtons: the listed one, else one percent of its strength.</summary>
    /// <returns>The force with its source; null when neither is known.</returns>
    public static Sourced? For(ChainType type)
    {
        if (type.MeasuringForceNewtons is { } listed) return listed;
        if (type.TensileKilonewtons is not { } tensile) return null;
        var onePercent = tensile.Times(1000 * ShareOfTensile);
        return onePercent with
        {
            Value = Math.Max(onePercent.Value, LeastNewtons),
            Source = "1 % of the tensile strength; " + tensile.Source,
        };
    }

    /// <summary>What to tell who measures, in plain words.</summary>
    public static Phrase Advice(ChainType type) => For(type) is { } force
        ? Phrase.Of($"Pull it straight with about {force.Value:0} N ({SourceWords.Of(force.Source)}), or measure in place, "
            + $"taut, and say so.")
        : AdviceWithoutType;

    /// <summary>What to tell who measures a chain of which no tensile strength is known.</summary>
    public static Phrase AdviceWithoutType { get; } = $"Measure in place, taut, and say so.";
}
