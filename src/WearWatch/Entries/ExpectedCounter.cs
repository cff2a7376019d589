namespace WearWatch.Entries;

/// <summary>What an hour counter is expected to show.</summary>
/// <param name="LastH">What it showed last, in hours.</param>
/// <param name="AboutH">The middle of what is expected, in hours.</param>
/// <param name="DeviationHours">The standard deviation of it, in hours.</param>
/// <param name="MostH">More than this it cannot show, since no more hours have passed; null where no dates tell.</param>
public readonly record struct ExpectedCounter(double LastH, double AboutH, double DeviationHours, double? MostH)
{
    private const double NearDeviations = 2.5;

    /// <summary>Whether a counter lies so near that nobody need look at it any further.</summary>
    public bool IsNear(double counterH)
    {
        var usual = AboutH - LastH;
        return MostH is not null ? Math.Abs(counterH - AboutH) <= NearDeviations * DeviationHours
            : counterH > LastH && Math.Abs(Math.Log((counterH - LastH) / usual)) <= NearDeviations * DeviationHours / usual;
    }
}
