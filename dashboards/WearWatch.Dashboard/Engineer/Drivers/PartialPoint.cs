namespace WearWatch.Dashboard.Engineer.Drivers;

/// <summary>The wear rate at one value of a quantity, over that of the typical chain.</summary>
/// <param name="Value">The value.</param>
/// <param name="Factor">The rate over the typical one.</param>
/// <param name="Low">Lower end of its 90 % interval.</param>
/// <param name="High">Upper end of its 90 % interval.</param>
public readonly record struct PartialPoint(double Value, double Factor, double Low, double High);
