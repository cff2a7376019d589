namespace WearWatch.Planning.Supply;

/// <summary>What has been ordered and is to come.</summary>
/// <param name="Due">When it is to arrive.</param>
/// <param name="Quantity">How much, in the part's own unit.</param>
public sealed record Delivery(DateTimeOffset Due, int Quantity);
