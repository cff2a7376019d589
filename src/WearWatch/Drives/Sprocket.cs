namespace WearWatch.Drives;

/// <summary>A sprocket's geometry. The chain lies on it as a polygon, which makes it run a little unevenly.</summary>
public static class Sprocket
{
    /// <summary>Pitch diameter in millimetres: <c>d = p/sin(180 deg/z)</c>. Source: docs/references.md [35].</summary>
    /// <param name="pitchMm">Pitch of the chain in millimetres, p.</param>
    /// <param name="teeth">Number of teeth, z.</param>
    public static double PitchDiameterMm(double pitchMm, int teeth) => pitchMm / Math.Sin(Math.PI / teeth);

    /// <summary>By how much the chain's speed swings in a turn at constant shaft speed, in percent of its mean.</summary>
    /// <remarks><c>100 (pi/z)(1/sin(pi/z) - 1/tan(pi/z))</c>. Geometry of the polygon; 4.1 % at 11 teeth, 0.8 % at 25.</remarks>
    /// <param name="teeth">Number of teeth, z.</param>
    public static double SpeedVariationPercent(int teeth)
    {
        var angle = Math.PI / teeth;
        return 100 * angle * (1 / Math.Sin(angle) - 1 / Math.Tan(angle));
    }

    /// <summary>Slip of a pin in its bush while a joint bends onto or off a sprocket, in millimetres: <c>pi d/z</c>.</summary>
    /// <remarks>The joint turns by 360 degrees/z at the pin's radius d/2. Geometry.</remarks>
    /// <param name="pinMm">Pin diameter in millimetres, d.</param>
    /// <param name="teeth">Number of teeth, z.</param>
    public static double SlipMm(double pinMm, int teeth) => Math.PI * pinMm / teeth;
}
