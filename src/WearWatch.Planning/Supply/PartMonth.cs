namespace WearWatch.Planning.Supply;

/// <summary>A part in one month.</summary>
public sealed record PartMonth
{
    /// <summary>The first day of the month.</summary>
    public required DateOnly Month { get; init; }

    /// <summary>What the plan takes in it.</summary>
    public required int Planned { get; init; }

    /// <summary>What is expected to be needed in it if each chain were swapped when it reaches its limit.</summary>
    public required double Expected { get; init; }

    /// <summary>Nine of ten times at least so much is needed from now to the end of the month.</summary>
    public required int Low { get; init; }

    /// <summary>Nine of ten times at most so much is needed from now to the end of the month.</summary>
    public required int High { get; init; }

    /// <summary>What is there by the end of the month when nothing more is ordered, before anything is taken.</summary>
    public required int Available { get; init; }

    /// <summary>What is missing by the end of the month, in expectation, when nothing more is ordered.</summary>
    public required double ExpectedShortage { get; init; }

    /// <summary>Whether it is worth a line: something is planned, or 0.05 pieces or more are expected or missing.</summary>
    public bool TellsSomething => Planned > 0 || Expected >= 0.05 || ExpectedShortage >= 0.05;
}
