namespace WearWatch.Chains.Links;

/// <summary>A row of OSHA Table N-184-1, 29 CFR 1910.184(e): the smallest chain size at any point of a sling's link.</summary>
/// <remarks>
/// A legal table is never interpolated: a size that is not in it has no minimum here, and its maker's figure decides. The row of
/// 1-3/4 in was recalled, the others were read; docs/references.md [85].
/// </remarks>
/// <param name="Size">The nominal size in inches as the table prints it.</param>
/// <param name="SizeInches">The nominal size in inches.</param>
/// <param name="Minimum">The minimum in inches as the table prints it.</param>
/// <param name="MinimumInches">The minimum in inches.</param>
/// <param name="IsVerified">Whether the row was read.</param>
public sealed record OshaChainSize(string Size, double SizeInches, string Minimum, double MinimumInches, bool IsVerified = true)
{
    private const double MmPerInch = 25.4;

    /// <summary>A size in millimetres on a card is an inch size rounded, when it differs by no more than this.</summary>
    private const double RoundingMm = 0.05;

    /// <summary>All rows.</summary>
    public static IReadOnlyList<OshaChainSize> All { get; } =
    [
        new("1/4", 1 / 4.0, "13/64", 13 / 64.0), new("3/8", 3 / 8.0, "19/64", 19 / 64.0), new("1/2", 1 / 2.0, "25/64", 25 / 64.0),
        new("5/8", 5 / 8.0, "31/64", 31 / 64.0), new("3/4", 3 / 4.0, "19/32", 19 / 32.0), new("7/8", 7 / 8.0, "45/64", 45 / 64.0),
        new("1", 1, "13/16", 13 / 16.0), new("1-1/8", 9 / 8.0, "29/32", 29 / 32.0), new("1-1/4", 5 / 4.0, "1", 1),
        new("1-3/8", 11 / 8.0, "1-3/32", 35 / 32.0), new("1-1/2", 3 / 2.0, "1-3/16", 19 / 16.0),
        new("1-3/4", 7 / 4.0, "1-13/32", 45 / 32.0, IsVerified: false),
    ];

    /// <summary>The smallest diameter at any point, in millimetres.</summary>
    public double MinimumMm => MinimumInches * MmPerInch;

    /// <summary>The row of a nominal diameter; null when the table has none.</summary>
    /// <param name="diameterMm">Nominal diameter in millimetres.</param>
    public static OshaChainSize? Of(double diameterMm) =>
        All.FirstOrDefault(row => Math.Abs(row.SizeInches * MmPerInch - diameterMm) <= RoundingMm);
}
