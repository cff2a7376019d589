using WearWatch.Chains;

namespace WearWatch.Plant.Bench;

/// <summary>One value of a chain type, to be shown beside those of others.</summary>
/// <param name="Key">Its name on the wire, with the unit at the end.</param>
/// <param name="Name">Its name on the screen.</param>
/// <param name="Dimension">What kind of number it is.</param>
/// <param name="Value">The number with its source; null when not known.</param>
public sealed record TypeValue(string Key, Phrase Name, TypeDimension Dimension, Sourced? Value)
{
    /// <summary>
    /// All values of a type, in the order of a catalogue; those that are not known too, so that types stand side by side.
    /// </summary>
    public static IReadOnlyList<TypeValue> Of(ChainType type) =>
    [
        new("pitch_mm", $"Pitch", TypeDimension.Length, type.PitchMm),
        new("roller_mm", $"Roller diameter", TypeDimension.Length, type.RollerMm),
        new("large_roller_mm", $"Large roller", TypeDimension.Length, type.LargeRollerMm),
        new("bush_mm", $"Bush diameter", TypeDimension.Length, type.BushMm),
        new("inner_width_mm", $"Width inside", TypeDimension.Length, type.InnerWidthMm),
        new("pin_mm", $"Pin diameter", TypeDimension.Length, type.PinMm),
        new("bush_length_mm", $"Bush length", TypeDimension.Length, type.BushLengthMm),
        new("link_diameter_mm", $"Link diameter", TypeDimension.Length, type.LinkDiameterMm),
        new("plate_mm", $"Plate thickness", TypeDimension.Length, type.PlateMm),
        new("row_spacing_mm", $"Distance of strands", TypeDimension.Length, type.RowSpacingMm),
        new("joint_area_mm2", $"Bearing area", TypeDimension.Area, type.JointAreaMm2),
        new("tensile_n", $"Tensile strength", TypeDimension.Force, type.TensileKilonewtons?.Times(1000)),
        new("measuring_n", $"Measuring load", TypeDimension.Force, type.MeasuringForceNewtons),
        new("new_length_tolerance_pct", $"New chain longer by", TypeDimension.Percent, type.NewLengthTolerancePercent),
    ];
}

/// <summary>What kind of number a value is, and so in which units it is shown.</summary>
public enum TypeDimension
{
    /// <summary>Millimetres.</summary>
    Length,

    /// <summary>Square millimetres.</summary>
    Area,

    /// <summary>Newtons.</summary>
    Force,

    /// <summary>Percent.</summary>
    Percent,
}
