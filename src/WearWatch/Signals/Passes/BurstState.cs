namespace WearWatch.Signals.Passes;

/// <summary>What one burst of a day says.</summary>
/// <param name="Hours">Hours since the day's first burst.</param>
/// <param name="Phase">Its phase at 20 degrees of the chain, unwrapped about the bursts before it, in pitches.</param>
/// <param name="PitchesPerSecond">How fast the chain ran.</param>
/// <param name="TemperatureC">The chain's temperature as it was told, in degrees Celsius.</param>
internal readonly record struct BurstState(double Hours, double Phase, double PitchesPerSecond, double TemperatureC);
