namespace WearWatch.Gauging;

/// <summary>Two strands of one chain that were measured at one visit and differ most.</summary>
/// <param name="LeastStrand">The least worn strand, counted from 1.</param>
/// <param name="Least">Its elongation.</param>
/// <param name="MostStrand">The most worn strand.</param>
/// <param name="Most">Its elongation.</param>
public sealed record StrandSpread(int LeastStrand, Elongation Least, int MostStrand, Elongation Most)
{
    /// <summary>
    /// Strands on common pins share the load; they count as unlike beyond so many standard deviations of the difference. With
    /// three, two strands that are alike are told of once in 370 visits, three once in 120.
    /// </summary>
    private const double Deviations = 3;

    /// <summary>By how much the longest strand is longer than the shortest, in percent of length.</summary>
    public double DifferencePercent => Most.Percent - Least.Percent;

    /// <summary>The largest difference that the uncertainty of the two strands explains, in percent of length.</summary>
    public double ExplainedPercent =>
        Deviations * double.Hypot(Least.StandardUncertaintyPercent, Most.StandardUncertaintyPercent);

    /// <summary>
    /// Whether they differ by more than their uncertainty explains: a sign to check the alignment (common practice).
    /// </summary>
    public bool IsUneven => DifferencePercent > ExplainedPercent;

    /// <summary>The two strands of a visit that differ most; null when fewer than two were measured.</summary>
    /// <param name="visit">What was measured at one visit; a strand's worst place counts for it.</param>
    public static StrandSpread? Of(IEnumerable<(int Strand, Elongation Elongation)> visit)
    {
        var strands = visit.GroupBy(s => s.Strand).Select(s => s.MaxBy(r => r.Elongation.Percent)).ToList();
        if (strands.Count < 2) return null;
        var (least, most) = (strands.MinBy(s => s.Elongation.Percent), strands.MaxBy(s => s.Elongation.Percent));
        return new(least.Strand, least.Elongation, most.Strand, most.Elongation);
    }
}
