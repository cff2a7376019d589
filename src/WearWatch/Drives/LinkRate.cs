using WearWatch.Units;

namespace WearWatch.Drives;

/// <summary>How many links pass a point in a minute, which together with the speed tells the pitch.</summary>
public static class LinkRate
{
    /// <summary>Pitch in millimetres: <c>p = v/rate</c>.</summary>
    /// <param name="speed">Speed of the chain.</param>
    /// <param name="linksPerMinute">Links that pass in a minute; above zero.</param>
    public static double PitchMm(Speed speed, double linksPerMinute)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(linksPerMinute);
        return speed.MetresPerSecond * 60_000 / linksPerMinute;
    }

    /// <summary>Links that pass in a minute.</summary>
    /// <param name="speed">Speed of the chain.</param>
    /// <param name="pitchMm">Pitch in millimetres; above zero.</param>
    public static double LinksPerMinute(Speed speed, double pitchMm)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(pitchMm);
        return speed.MetresPerSecond * 60_000 / pitchMm;
    }
}
