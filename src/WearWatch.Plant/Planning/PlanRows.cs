using WearWatch.Chains.Families;
using WearWatch.Planning.Supply;
using WearWatch.Planning.Windows;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Planning;

/// <summary>The planner's rows in the words of the planner's domain.</summary>
public static class PlanRows
{
    /// <summary>What the swaps of a family take.</summary>
    public static SwapWork ToWork(SwapWorkRow row) => new(row.Hours, row.HoursPer100Pitches, row.People);

    /// <summary>A planned shutdown.</summary>
    public static WindowRule ToRule(WindowRuleRow row) => new()
    {
        Id = row.Key,
        Line = row.Line,
        FirstStart = row.FirstStart,
        Length = TimeSpan.FromHours(row.LengthH),
        Recurrence = row.Recurrence,
        Exceptions = row.Exceptions,
        Crew = row.Crew,
        CrewHours = row.CrewHours,
    };

    /// <summary>A part of the store.</summary>
    public static Part ToPart(SpareRow row) => new(Enum.Parse<PartKind>(row.Kind), row.Designation);

    /// <summary>A part's stock; what is on order comes at the beginning of its day.</summary>
    /// <param name="row">The part.</param>
    /// <param name="orders">The orders that are to come, of all parts.</param>
    /// <param name="zone">The plant's time zone.</param>
    public static Spare ToSpare(SpareRow row, IEnumerable<PurchaseLine> orders, TimeZoneInfo zone) => new()
    {
        Part = ToPart(row),
        InStock = row.InStock,
        LeadTime = TimeSpan.FromDays(row.LeadDays),
        ExpressLeadTime = TimeSpan.FromDays(row.ExpressLeadDays),
        PackSize = row.PackSize,
        Price = row.Price,
        OnOrder =
        [
            .. row.OnOrder.Select(d => new Delivery(MorningOf(d.Due, zone), d.Quantity)),
            .. orders.Where(o => (o.Row.Kind, o.Row.Designation) == (row.Kind, row.Designation))
                .Select(o => new Delivery(MorningOf(o.CountedOn, zone), o.Row.Quantity)),
        ],
    };

    private static DateTimeOffset MorningOf(DateOnly day, TimeZoneInfo zone)
    {
        var wall = day.ToDateTime(default);
        return new DateTimeOffset(wall, zone.GetUtcOffset(wall));
    }
}
