namespace WearWatch.Signals.Passes;

/// <summary>What went wrong at the sensors in a day, counted.</summary>
/// <param name="Passes">Passes at both sensors.</param>
/// <param name="Missed">Pulses that were missed.</param>
/// <param name="Doubled">Pulses too many.</param>
/// <param name="Stops">How often the chain stood in a burst.</param>
/// <param name="UnusedBursts">
/// Bursts that gave nothing: too few passes, or another phase than the rest, as of a chain that ran backwards.
/// </param>
public sealed record PassFaults(int Passes, int Missed, int Doubled, int Stops, int UnusedBursts)
{
    /// <summary>Share of the pulses that were missed.</summary>
    public double MissedShare => Passes + Missed == 0 ? 0 : (double)Missed / (Passes + Missed);
}
