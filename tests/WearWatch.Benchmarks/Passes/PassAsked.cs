namespace WearWatch.Benchmarks.Passes;

/// <summary>What is to come of a day at two sensors.</summary>
internal enum PassAsked
{
    /// <summary>A reading with the right count, and never one with a wrong count.</summary>
    Kept,

    /// <summary>A reading that its own uncertainty covers at k = 2.</summary>
    Covered,

    /// <summary>A reading within 0.02 points.</summary>
    Near,

    /// <summary>No reading.</summary>
    Refused,
}
