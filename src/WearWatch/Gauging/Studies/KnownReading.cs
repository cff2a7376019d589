namespace WearWatch.Gauging.Studies;

/// <summary>A reading of a length that is known better than the tool can tell.</summary>
/// <param name="Known">The known length.</param>
/// <param name="Measured">What was measured, in the same unit.</param>
public readonly record struct KnownReading(double Known, double Measured);
