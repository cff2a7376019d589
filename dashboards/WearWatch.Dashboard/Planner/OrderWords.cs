using System.Diagnostics;
using System.Globalization;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Planner;

/// <summary>The states and steps of an order in words.</summary>
public static class OrderWords
{
    /// <summary>An amount to the cent where it has cents, as the person's language writes it.</summary>
    public static string Amount(double amount) => amount.ToString("#,0.##", CultureInfo.CurrentCulture);

    public static string Of(PurchaseState state) => state switch
    {
        PurchaseState.Ordered => T["ordered"],
        PurchaseState.Confirmed => T["confirmed"],
        PurchaseState.Received => T["received"],
        PurchaseState.Cancelled => T["cancelled"],
        _ => throw new UnreachableException($"State {state} has no words."),
    };

    public static string Of(OrderLine.Step step) => step switch
    {
        OrderLine.Step.Confirm => T["Save date"],
        OrderLine.Step.Receive => T["Put into stock"],
        OrderLine.Step.Cancel => T["Cancel order"],
        _ => "",
    };
}
