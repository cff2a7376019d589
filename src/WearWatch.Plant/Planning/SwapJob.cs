using WearWatch.Chains.Families;
using WearWatch.Planning.Plans;
using WearWatch.Planning.Swaps;

namespace WearWatch.Plant.Planning;

/// <summary>A swap of the saved plan, with all that the people who do it have to know.</summary>
public sealed record SwapJob
{
    /// <summary>The chain.</summary>
    public required ChainFace Face { get; init; }

    /// <summary>Where the plan puts its swap.</summary>
    public required Placement Placement { get; init; }

    /// <summary>What the swap takes: hours, people, parts.</summary>
    public required SwapTask Task { get; init; }

    /// <summary>How the new chain is made up. For a chain whose length is not on record, of the pitches that are usual.</summary>
    public required ChainCut Cut { get; init; }

    /// <summary>The chains that are swapped together with it.</summary>
    public required IReadOnlyList<string> Together { get; init; }

    /// <summary>What a person noted on the decision; empty for nothing.</summary>
    public required string Note { get; init; }
}
