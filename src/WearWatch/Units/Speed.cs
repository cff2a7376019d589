namespace WearWatch.Units;

/// <summary>A speed of a chain along its path.</summary>
/// <param name="MetresPerSecond">The speed in metres a second.</param>
public readonly record struct Speed(double MetresPerSecond) : IComparable<Speed>
{
    /// <summary>Metres a second in a foot a minute, exactly: 0.3048/60.</summary>
    public const double MetresPerSecondPerFootPerMinute = 0.3048 / 60;

    /// <summary>A speed given in feet a minute.</summary>
    public static Speed FromFeetPerMinute(double feetPerMinute) => new(feetPerMinute * MetresPerSecondPerFootPerMinute);

    /// <summary>A speed given in metres an hour, as slow conveyors are.</summary>
    public static Speed FromMetresPerHour(double metresPerHour) => new(metresPerHour / 3600);

    /// <summary>The speed in feet a minute.</summary>
    public double FeetPerMinute => MetresPerSecond / MetresPerSecondPerFootPerMinute;

    /// <inheritdoc/>
    public int CompareTo(Speed other) => MetresPerSecond.CompareTo(other.MetresPerSecond);

    /// <summary>Whether the left is slower.</summary>
    public static bool operator <(Speed left, Speed right) => left.MetresPerSecond < right.MetresPerSecond;

    /// <summary>Whether the left is faster.</summary>
    public static bool operator >(Speed left, Speed right) => left.MetresPerSecond > right.MetresPerSecond;

    /// <summary>Whether the left is not faster.</summary>
    public static bool operator <=(Speed left, Speed right) => left.MetresPerSecond <= right.MetresPerSecond;

    /// <summary>Whether the left is not slower.</summary>
    public static bool operator >=(Speed left, Speed right) => left.MetresPerSecond >= right.MetresPerSecond;

    /// <summary>The speed in metres an hour.</summary>
    public double MetresPerHour => MetresPerSecond * 3600;
}
