namespace WearWatch.Lives;

/// <summary>A failure as a point on probability paper.</summary>
/// <param name="Hours">Its hours.</param>
/// <param name="ShareFailed">Median rank: the share of such chains that have failed by then, 0 to 1 exclusive.</param>
public readonly record struct PlottedLife(double Hours, double ShareFailed)
{
    /// <summary>
    /// The failures of some lives with their places on the paper, in order of hours; suspensions move the ranks of later
    /// failures.
    /// </summary>
    /// <remarks>
    /// A failure's rank is the one before it plus <c>(n + 1 - rank before)/(1 + chains left)</c> (L. G. Johnson's adjusted rank),
    /// its share <c>(rank - 0.3)/(n + 0.4)</c> (A. Benard's approximation of the median rank); both from memory, as in R. B.
    /// Abernethy, The New Weibull Handbook. Of equal hours failures come first.
    /// </remarks>
    public static IReadOnlyList<PlottedLife> Of(IReadOnlyCollection<Life> lives)
    {
        var points = new List<PlottedLife>();
        var (left, rank) = (lives.Count, 0.0);
        foreach (var life in lives.OrderBy(l => l.Hours).ThenBy(l => !l.Failed))
        {
            if (life.Failed)
            {
                rank += (lives.Count + 1 - rank) / (1 + left);
                points.Add(new(life.Hours, (rank - 0.3) / (lives.Count + 0.4)));
            }

            left--;
        }

        return points;
    }
}
