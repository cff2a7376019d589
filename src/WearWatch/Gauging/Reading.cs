using WearWatch.Running;
using WearWatch.Units;

namespace WearWatch.Gauging;

/// <summary>With what a length was measured.</summary>
public enum Tool
{
    /// <summary>A steel tape, pin centre to pin centre.</summary>
    Tape,

    /// <summary>A caliper, inside and outside of the end rollers.</summary>
    Caliper,

    /// <summary>Sensors on the running chain.</summary>
    Sensor,
}

/// <summary>What somebody or something measured, as it was told: raw input, kept for ever.</summary>
public sealed record Reading
{
    /// <summary>The chain's name.</summary>
    public required string Chain { get; init; }

    /// <summary>When it was taken, if it was told. At least one of this and <see cref="Counter"/> is known.</summary>
    public DateTimeOffset? TakenAt { get; init; }

    /// <summary>The hour counter when it was taken, if it was told.</summary>
    public RunningHours? Counter { get; init; }

    /// <summary>With what it was measured.</summary>
    public required Tool Tool { get; init; }

    /// <summary>The marked section of the chain, or empty.</summary>
    public string Place { get; init; } = "";

    /// <summary>Which strand of a multi-strand chain, counted from 1; null when it was not told or there is one only.</summary>
    public int? Strand { get; init; }

    /// <summary>How the chain was held meanwhile.</summary>
    public Held Held { get; init; }

    /// <summary>Number of pitches in the measured length.</summary>
    public required int Pitches { get; init; }

    /// <summary>The measured length in millimetres.</summary>
    public required double LengthMm { get; init; }

    /// <summary>The length as it was written, such as <c>48 3/16</c>; empty where nobody wrote it.</summary>
    public string Written { get; init; } = "";

    /// <summary>The unit in which it was written.</summary>
    public LengthUnit Unit { get; init; } = LengthUnit.Millimetre;

    /// <summary>
    /// Where the take-up stood at this visit, in millimetres from where a new chain is taut; null when nobody read it.
    /// </summary>
    public double? TakeUpMm { get; init; }

    /// <summary>Temperature of the chain in degrees Celsius; null when it was not told (taken as 20).</summary>
    public double? TemperatureC { get; init; }

    /// <summary>
    /// Standard uncertainty of the length in millimetres, where sensors have told it; null for what is usual for the tool.
    /// </summary>
    public double? LengthUncertaintyMm { get; init; }
}
