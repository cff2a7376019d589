namespace WearWatch.Planning.Supply;

/// <summary>A part in one month.</summary>
/// <param name="Month">The first day of the month.</param>
/// <param name="Planned">What the plan takes in it.</param>
/// <param name="Expected">What is expected to be needed in it if each chain were swapped when it reaches its limit.</param>
/// <param name="Low">Nine of ten times at least so much is needed from now to the end of the month.</param>
/// <param name="High">Nine of ten times at most so much is needed from now to the end of the month.</param>
/// <param name="Available">What is there by the end of the month when nothing more is ordered, before anything is taken.</param>
/// <param name="ExpectedShortage">What is missing by the end of the month, in expectation, when nothing more is ordered.</param>
public sealed record PartMonth(
    DateOnly Month, int Planned, double Expected, int Low, int High, int Available, double ExpectedShortage)
{
    /// <summary>Whether it is worth a line: something is planned, or 0.05 pieces or more are expected or missing.</summary>
    public bool TellsSomething => Planned > 0 || Expected >= 0.05 || ExpectedShortage >= 0.05;
}
