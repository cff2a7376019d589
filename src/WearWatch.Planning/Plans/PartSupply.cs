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
}
