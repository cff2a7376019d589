using System.Globalization;

namespace WearWatch.Benchmarks.Years;

/// <summary>What ten years of one way of running a mill have cost and brought.</summary>
internal sealed class Ledger
{
    public double Cost { get; private set; }

    public int Swaps { get; private set; }

    public int Breakdowns { get; private set; }

    public int Readings { get; private set; }

    /// <summary>Sum over the swaps of the share of the life to the limit that was thrown away.</summary>
    public double Unused { get; private set; }

    public int Forecasts { get; private set; }

    /// <summary>Of the forecasts, those whose 90 % band held the truth.</summary>
    public int Held { get; private set; }

    public void Pay(double amount) => Cost += amount;

    public void Swapped(double hours, double reachesLimitAt, bool broken)
    {
        Swaps++;
        if (broken) Breakdowns++;
        Unused += Math.Max(0, 1 - hours / reachesLimitAt);
    }

    public void Measured(double cost)
    {
        Readings++;
        Pay(cost);
    }

    public void Forecasted(bool held)
    {
        Forecasts++;
        if (held) Held++;
    }

    public void Add(Ledger other)
    {
        (Cost, Swaps, Breakdowns) = (Cost + other.Cost, Swaps + other.Swaps, Breakdowns + other.Breakdowns);
        (Readings, Unused) = (Readings + other.Readings, Unused + other.Unused);
        (Forecasts, Held) = (Forecasts + other.Forecasts, Held + other.Held);
    }

    public override string ToString() => string.Create(CultureInfo.InvariantCulture,
        $"{Cost / 1000:#,0} | {Swaps} | {Breakdowns} | {Unused / Math.Max(Swaps, 1):0.00} | {Readings:#,0} | ")
        + (Forecasts > 0 ? string.Create(CultureInfo.InvariantCulture, $"{(double)Held / Forecasts:0.00}") : "");
}
