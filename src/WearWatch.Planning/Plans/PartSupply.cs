using WearWatch.Planning.Supply;

namespace WearWatch.Planning.Plans;

/// <summary>
/// What can be had of a part: before its lead time is over only what is there or on order, or what comes with haste; before haste
/// can bring it only what is there or on order.
/// </summary>
internal sealed class PartSupply(Spare spare, DateTimeOffset now)
{
    public Spare Spare { get; } = spare;

    public Part Part => Spare.Part;

    /// <summary>From then on ordinary orders arrive in time, so nothing limits a swap.</summary>
    public DateTimeOffset OrdersArrive { get; } = now + spare.LeadTime;

    /// <summary>From then on what is ordered with haste arrives in time.</summary>
    public DateTimeOffset ExpressArrives { get; } = now + spare.ExpressLeadTime;

    /// <summary>Whether a swap then can take only what is there, on order, or had with haste.</summary>
    public bool Binds(DateTimeOffset windowStart) => windowStart < OrdersArrive;

    /// <summary>Whether not even haste brings more in time for a swap then.</summary>
    public bool IsBeyondHaste(DateTimeOffset windowStart) => windowStart < ExpressArrives;

    /// <summary>The last of some dates before each delivery, and before orders arrive, with what is there by then.</summary>
    /// <remarks>What is taken only grows: where the limit is kept on such a date, it was kept on those before it.</remarks>
    public IEnumerable<(DateTimeOffset Date, int Available)> LastDatesBeforeMore(IEnumerable<DateTimeOffset> dates) =>
        LastBeforeMore(dates.Where(Binds));

    /// <summary>The same for the dates at which not even haste brings more.</summary>
    public IEnumerable<(DateTimeOffset Date, int Available)> LastDatesBeyondHaste(IEnumerable<DateTimeOffset> dates) =>
        LastBeforeMore(dates.Where(IsBeyondHaste));

    private IEnumerable<(DateTimeOffset Date, int Available)> LastBeforeMore(IEnumerable<DateTimeOffset> dates) =>
        dates.GroupBy(Spare.AvailableAt).Select(g => (g.Max(), g.Key));
}
