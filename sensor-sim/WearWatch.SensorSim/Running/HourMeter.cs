namespace WearWatch.SensorSim.Running;

/// <summary>A change of a position's hour counter: from then on it counts from zero.</summary>
/// <param name="AtHour">The line's running hours when it happened.</param>
/// <param name="Recorded">Whether anybody wrote it down.</param>
internal sealed record MeterReset(double AtHour, bool Recorded);

/// <summary>The hour counter of a position: shows whole hours or tenths, and may have been exchanged once.</summary>
/// <param name="StartHour">The line's running hours when the count began.</param>
/// <param name="StartCount">What it showed then.</param>
/// <param name="Decimals">Digits after the point, 0 or 1.</param>
/// <param name="Reset">The exchange, if there was one.</param>
internal sealed record HourMeter(double StartHour, double StartCount, int Decimals, MeterReset? Reset)
{
    /// <summary>What it shows at the line's running hours.</summary>
    public double CountAt(double hour) =>
        Reset is { } reset && hour >= reset.AtHour ? Shown(hour - reset.AtHour) : CountWithoutReset(hour);

    /// <summary>What it showed just before it was exchanged.</summary>
    public double CountBeforeReset => CountWithoutReset(Reset!.AtHour);

    private double CountWithoutReset(double hour) => Shown(StartCount + hour - StartHour);

    /// <summary>A counter moves on when the unit is full: it cuts, it does not round.</summary>
    private double Shown(double hours)
    {
        var unitsPerHour = Decimals == 0 ? 1 : 10;
        return Math.Floor(hours * unitsPerHour + 1e-6) / unitsPerHour;
    }
}
