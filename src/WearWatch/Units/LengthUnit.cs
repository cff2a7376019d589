namespace WearWatch.Units;

/// <summary>
/// The units in which a length is written on a tape, in a file or on a screen. Inside it is always millimetres.
/// </summary>
public enum LengthUnit
{
    /// <summary>Millimetres.</summary>
    Millimetre,

    /// <summary>Inches of exactly 25.4 mm.</summary>
    Inch,
}
