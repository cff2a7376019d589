namespace WearWatch.Drives;

/// <summary>The length of a chain around two sprockets, and the distance of their shafts.</summary>
public static class ChainLoop
{
    /// <summary>
    /// Length in pitches: <c>L = 2 C + (z1 + z2)/2 + (z2 - z1)^2/(4 pi^2 C)</c>. Source: docs/references.md [35].
    /// </summary>
    /// <param name="teeth">Teeth of one sprocket, z1.</param>
    /// <param name="otherTeeth">Teeth of the other, z2.</param>
    /// <param name="centrePitches">Distance of the shafts in pitches, C.</param>
    public static double LengthPitches(int teeth, int otherTeeth, double centrePitches) =>
        2 * centrePitches + (teeth + otherTeeth) / 2.0 + Math.Pow((otherTeeth - teeth) / (2 * Math.PI), 2) / centrePitches;

    /// <summary>
    /// Distance of the shafts in pitches for a chain of so many pitches; the inverse of <see cref="LengthPitches"/>.
    /// </summary>
    /// <remarks>
    /// <c>C = (1/4){a + sqrt(a^2 - 8 (z2 - z1)^2/(4 pi^2))}</c>, <c>a = L - (z1 + z2)/2</c>. Source: docs/references.md [35].
    /// </remarks>
    /// <param name="teeth">Teeth of one sprocket, z1.</param>
    /// <param name="otherTeeth">Teeth of the other, z2.</param>
    /// <param name="pitches">Length of the chain in pitches, L.</param>
    /// <returns>The distance; null when the chain is too short for these sprockets.</returns>
    public static double? CentrePitches(int teeth, int otherTeeth, double pitches)
    {
        var a = pitches - (teeth + otherTeeth) / 2.0;
        var root = a * a - 8 * Math.Pow((otherTeeth - teeth) / (2 * Math.PI), 2);
        return a > 0 && root >= 0 ? (a + Math.Sqrt(root)) / 4 : null;
    }

    /// <summary>The next even number of pitches, so that no offset link is needed.</summary>
    public static int EvenPitches(double lengthPitches) => 2 * (int)Math.Ceiling(lengthPitches / 2 - 1e-9);

    /// <summary>Total movement in the middle of the slack span to aim for, as a share of the centre distance.</summary>
    /// <remarks>
    /// 4 % for an ordinary drive; 2 % where it is fast, jerks or stands upright. Source: docs/references.md [36], [38].
    /// </remarks>
    /// <param name="tight">Whether the drive is fast, impulsive or vertical.</param>
    public static double SlackShare(bool tight) => tight ? 0.02 : 0.04;
}
