namespace WearWatch.Worker.Intake;

/// <summary>The unit in which a length is told.</summary>
public enum LengthUnit
{
    /// <summary>Millimetres.</summary>
    Millimetres,

    /// <summary>Inches, as a decimal or with a fraction such as <c>48 3/16</c>.</summary>
    Inches,
}
