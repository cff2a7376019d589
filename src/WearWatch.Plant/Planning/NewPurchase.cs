using WearWatch.Planning.Supply;

namespace WearWatch.Plant.Planning;

/// <summary>What a person orders.</summary>
/// <param name="Part">The part.</param>
/// <param name="Quantity">Pitches of chain, pieces of all else.</param>
/// <param name="ExpectedOn">The day on which it is expected.</param>
public sealed record NewPurchase(Part Part, int Quantity, DateOnly ExpectedOn)
{
    /// <summary>From whom; empty for not said.</summary>
    public string Supplier { get; init; } = "";

    /// <summary>The price of one unit, in the plant's currency.</summary>
    public double Price { get; init; }

    /// <summary>Whether it comes with haste.</summary>
    public bool IsExpress { get; init; }
}
