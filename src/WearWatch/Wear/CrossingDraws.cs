using MathNet.Numerics.Distributions;

namespace WearWatch.Wear;

/// <summary>
/// The fixed chances by which a forecast is drawn: the same for every chain and limit, so that results repeat to the bit.
/// </summary>
/// <remarks>
/// Every column takes each of the 1,200 strata <c>(i + 0.5) / 1200</c> once, in the order of a shifted rank-1 lattice
/// (<c>(g i + s) mod 1200</c>): over all columns together the draws lie more evenly than random orders would put them.
/// The generators were chosen so that every two columns, the order of the accounts included, form a good lattice (figure of
/// merit at least 80 of about 320 possible); generators and shifts then by the least error of the quantiles at 5, 50 and 95 %
/// against 100,000 draws over 91 tracks and three limits: 0.8 % root mean square and 3.8 % at worst, where random orders of the
/// same strata gave 1.6 % and 13 %.
/// </remarks>
internal static class CrossingDraws
{
    /// <summary>Draws a forecast.</summary>
    public const int Count = 1200;

    /// <summary>Standard normal draws for ln(rate).</summary>
    public static readonly double[] Rate = StandardNormal(871, 808);

    /// <summary>Standard normal draws for the wear reached.</summary>
    public static readonly double[] Wear = StandardNormal(473, 423);

    /// <summary>Standard normal draws for the wandering of the rate.</summary>
    public static readonly double[] Drift = StandardNormal(493, 235);

    /// <summary>Standard normal draws for uneven wear.</summary>
    public static readonly double[] Unevenness = StandardNormal(91, 552);

    /// <summary>Standard normal draws for the size of a jump to come.</summary>
    public static readonly double[] JumpSize = StandardNormal(259, 677);

    /// <summary>Standard exponential draws for the time of the next jump.</summary>
    public static readonly double[] JumpTime = [.. Strata(731, 1126).Select(u => -Math.Log(u))];

    private static double[] StandardNormal(int generator, int shift) =>
        [.. Strata(generator, shift).Select(u => Normal.InvCDF(0, 1, u))];

    private static IEnumerable<double> Strata(int generator, int shift) =>
        Enumerable.Range(0, Count).Select(i => ((generator * i + shift) % Count + 0.5) / Count);
}
