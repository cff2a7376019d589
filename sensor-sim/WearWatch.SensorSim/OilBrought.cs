namespace WearWatch.SensorSim;

/// <summary>What was brought to a chain by hand at an oiling.</summary>
/// <param name="Grade">The oil's grade.</param>
/// <param name="AmountMl">How much, in millilitres; null where nobody wrote it down.</param>
public sealed record OilBrought(string Grade, double? AmountMl);
