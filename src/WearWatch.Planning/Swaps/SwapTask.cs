using WearWatch.Planning.Supply;

namespace WearWatch.Planning.Swaps;

/// <summary>One chain that will have to be swapped, with what the swap takes.</summary>
public sealed record SwapTask
{
    /// <summary>The chain's name.</summary>
    public required string Chain { get; init; }

    /// <summary>The line on which it runs.</summary>
    public required string Line { get; init; }

    /// <summary>Its chain type, or empty.</summary>
    public string ChainType { get; init; } = "";

    /// <summary>When it reaches its limit, as a distribution.</summary>
    public required HoursToLimit Left { get; init; }

    /// <summary>Running hours that it has on it now.</summary>
    public required double HoursRun { get; init; }

    /// <summary>How long the swap takes.</summary>
    public required double Hours { get; init; }

    /// <summary>People it needs at once.</summary>
    public int People { get; init; } = 1;

    /// <summary>Parts that it takes from the shelf.</summary>
    public IReadOnlyList<PartNeed> Needs { get; init; } = [];

    /// <summary>Whether the drive's sprockets are replaced with the chain.</summary>
    public bool TakesSprockets => Needs.Any(need => need.Part.Kind == PartKind.Sprocket);

    /// <summary>Price of the chain with its links.</summary>
    public double ChainPrice { get; init; }

    /// <summary>Price of the sprockets that a chain run past its limit takes along. Source: common practice.</summary>
    public double SprocketPrice { get; init; }

    /// <summary>Chains of one group run in parallel and are swapped together; empty for a chain on its own.</summary>
    public string ParallelGroup { get; init; } = "";

    /// <summary>
    /// The moment after which a chain that holds a load must not be used; no plan lets it run on. Null for a chain that holds no
    /// load, and for one whose limit is not near.
    /// </summary>
    public DateTimeOffset? OutOfUseBy { get; init; }

    /// <summary>Whether its date rests on no reading of its own: no proposal swaps it before it has been measured.</summary>
    public bool MeasureFirst { get; init; }

    /// <summary>The crew hours that it takes.</summary>
    public double CrewHours => Hours * People;
}
