namespace WearWatch.Signals.Running;

/// <summary>One message about running.</summary>
/// <param name="At">When.</param>
/// <param name="Value">A counter in hours, 1 or 0 of a switch, or a count of pulses.</param>
public readonly record struct RunningSignal(DateTimeOffset At, double Value);
