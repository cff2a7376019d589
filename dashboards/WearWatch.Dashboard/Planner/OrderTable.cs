using System.Globalization;
using WearWatch.Plant.Files;
using WearWatch.Plant.Planning;

namespace WearWatch.Dashboard.Planner;

/// <summary>The order book as a table that leaves the house.</summary>
public static class OrderTable
{
    public static PlanTable Of(IReadOnlyList<PurchaseLine> orders) => new(
        "order-book", ["part", "unit", "quantity", "supplier", "unit_price", "sum", "express", "state", "expected_on", "late",
            "received_quantity"],
        [.. orders.Select(o => (IReadOnlyList<object?>)[
            o.Part.ToString(), o.Part.Unit, o.Row.Quantity, o.Row.Supplier, o.Row.Price, o.Sum, o.Row.IsExpress ? "yes" : "",
            FileWords.Of(o.Row.State), o.Row.ExpectedOn.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            o.IsLate ? "yes" : "", o.Row.ReceivedQuantity])]);
}
