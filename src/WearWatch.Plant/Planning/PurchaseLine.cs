using WearWatch.Planning.Supply;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Planning;

/// <summary>An order with what the plan counts on.</summary>
/// <param name="Row">The order.</param>
/// <param name="Today">The day of the plant.</param>
public sealed record PurchaseLine(PurchaseRow Row, DateOnly Today)
{
    /// <summary>An order whose day has passed is counted on so many days from now, until it has a new one.</summary>
    /// <remarks>An assumption.</remarks>
    public const int DaysMoreWhenLate = 7;

    /// <summary>The part.</summary>
    public Part Part => new(Enum.Parse<PartKind>(Row.Kind), Row.Designation);

    /// <summary>Whether it is still to come though its day has passed.</summary>
    public bool IsLate => Row.IsOpen && Row.ExpectedOn < Today;

    /// <summary>The day on which the plan counts on it.</summary>
    public DateOnly CountedOn => IsLate ? Today.AddDays(DaysMoreWhenLate) : Row.ExpectedOn;

    /// <summary>What it costs, in the plant's currency.</summary>
    public double Sum => Row.Price * Row.Quantity;
}
