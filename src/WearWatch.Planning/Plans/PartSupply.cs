using WearWatch.Planning.Supply;

namespace WearWatch.Planning.Plans;

/// <summary>What can be had of a part without haste: before its lead time is over only what is there or on order.</summary>
internal sealed class PartSupply(Spare spare, DateTimeOffset now)
{
    public Spare Spare { get; } = spare;

    public Part Part => Spare.Part;

    /// <summary>From then on ordinary orders arrive in time, so nothing limits a swap.</summary>
    public DateTimeOffset OrdersArrive { get; } = now + spare.LeadTime;

    public bool Binds(DateTimeOffset windowStart) => windowStart < OrdersArrive;

    /// <summary>The last of some dates before each delivery, and before orders arrive, with what is there by then.</summary>
    /// <remarks>What is taken only grows: where the limit is kept on such a date, it was kept on those before it.</remarks>
    public IEnumerable<(DateTimeOffset Date, int Available)> LastDatesBeforeMore(IEnumerable<DateTimeOffset> dates) =>
        dates.Where(Binds).GroupBy(Spare.AvailableAt).Select(g => (g.Max(), g.Key));
}
