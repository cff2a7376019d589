namespace WearWatch.Planning.Supply;

/// <summary>What the plan takes of a part, month by month, and what must be ordered by when.</summary>
/// <param name="Spare">The part with what is there and on order.</param>
/// <param name="OnRecord">Whether the plant keeps a record of it; if not, nothing is taken to be there.</param>
/// <param name="Months">Month by month.</param>
/// <param name="Quantity">What must be ordered for the plan, in whole packs; zero when enough is there or on order.</param>
/// <param name="NeededBy">The day of the first swap that lacks it, or null.</param>
/// <param name="LatestOrder">The last day on which an ordinary order still arrives for that swap, or null.</param>
public sealed record PartOrder(
    Spare Spare, bool OnRecord, IReadOnlyList<PartMonth> Months, int Quantity, DateTimeOffset? NeededBy,
    DateTimeOffset? LatestOrder)
{
    /// <summary>Whether that last day has gone by, so that it must come with haste.</summary>
    public bool TooLateAt(DateTimeOffset now) => LatestOrder is { } latest && latest < now;
}
