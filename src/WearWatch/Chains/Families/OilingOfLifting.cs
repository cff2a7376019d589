namespace WearWatch.Chains.Families;

/// <summary>How often a chain that lifts or holds a load is cared for and oiled at the latest.</summary>
/// <param name="Hours">Hours of running.</param>
/// <param name="Months">Months, whatever it runs; whichever comes first.</param>
/// <param name="Source">Who says so, as it stands on a screen.</param>
public sealed record OilingOfLifting(double Hours, int Months, string Source);
