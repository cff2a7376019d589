namespace WearWatch.Plant.Costs;

/// <summary>A stretch of time for which costs are told.</summary>
/// <param name="From">Its first moment.</param>
/// <param name="To">The moment at which it is over.</param>
public readonly record struct CostPeriod(DateTimeOffset From, DateTimeOffset To)
{
    /// <summary>The year up to a moment.</summary>
    public static CostPeriod YearUpTo(DateTimeOffset moment) => new(moment.AddYears(-1), moment);

    /// <summary>The same stretch a year before.</summary>
    public CostPeriod YearBefore => new(From.AddYears(-1), To.AddYears(-1));

    /// <summary>Whether a moment lies in it.</summary>
    public bool Holds(DateTimeOffset at) => at >= From && at < To;

    /// <summary>Which share of a time from one moment to another lies in it.</summary>
    public double ShareOf(DateTimeOffset from, DateTimeOffset to)
    {
        if (to <= from) return 0;
        var (start, end) = (from > From ? from : From, to < To ? to : To);
        return end > start ? (end - start) / (to - from) : 0;
    }
}
