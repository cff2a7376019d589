namespace WearWatch.Drives;

/// <summary>The factors by which a rating for one strand and a smooth load is turned into one for a real drive.</summary>
/// <remarks>Source: docs/references.md [32].</remarks>
public static class RatingFactors
{
    private static readonly double[] OfStrands = [1.0, 1.7, 2.5, 3.3, 3.9, 4.6];

    /// <summary>The most strands that the table knows.</summary>
    public static int MostStrands => OfStrands.Length;

    /// <summary>What several strands carry, as a multiple of one; strands never share evenly.</summary>
    /// <param name="strands">1 to 6.</param>
    public static double Strands(int strands)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(strands, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(strands, MostStrands);
        return OfStrands[strands - 1];
    }

    /// <summary>By how much the power to be transmitted is raised for its unevenness.</summary>
    /// <param name="load">How evenly the driven machine pulls.</param>
    /// <param name="mover">What drives.</param>
    public static double Service(LoadKind load, PrimeMover mover) => (load, mover) switch
    {
        (LoadKind.Smooth, PrimeMover.EngineMechanical) => 1.2,
        (LoadKind.Smooth, _) => 1.0,
        (LoadKind.SomeImpact, PrimeMover.MotorOrTurbine) => 1.3,
        (LoadKind.SomeImpact, PrimeMover.EngineHydraulic) => 1.2,
        (LoadKind.SomeImpact, _) => 1.4,
        (_, PrimeMover.MotorOrTurbine) => 1.5,
        (_, PrimeMover.EngineHydraulic) => 1.4,
        _ => 1.7,
    };
}
