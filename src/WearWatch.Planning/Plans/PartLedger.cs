using WearWatch.Planning.Supply;

namespace WearWatch.Planning.Plans;

/// <summary>
/// What a placing takes of one part, date by date, how much of it must come with haste, and how much cannot come.
/// </summary>
internal sealed class PartLedger
{
    private readonly int[] dateOf;
    private readonly int[] taken;
    private readonly int[] there;
    private readonly bool[] beyondHaste;
    private readonly double expressPrice;

    public PartLedger(PlanCase plan, PartSupply supply)
    {
        Part = supply.Part;
        expressPrice = plan.Input.Costs.ExpressShare * supply.Spare.Price;
        var dates = plan.Windows.Select(w => w.Start).Where(supply.Binds).Distinct().Order().ToArray();
        dateOf = [.. plan.Windows.Select(w => Array.BinarySearch(dates, w.Start))];
        taken = new int[dates.Length];
        there = [.. dates.Select(supply.Spare.AvailableAt)];
        beyondHaste = [.. dates.Select(supply.IsBeyondHaste)];
    }

    public Part Part { get; }

    /// <summary>The surcharge on what must come with haste.</summary>
    public double Cost { get; private set; }

    /// <summary>How much is taken that not even haste brings in time.</summary>
    public int Missing { get; private set; }

    /// <summary>Takes a quantity for a window; a negative one gives it back.</summary>
    public void Take(int window, int quantity)
    {
        if (dateOf[window] < 0) return; // ordinary orders arrive before it
        taken[dateOf[window]] += quantity;
        var (sum, worst, missing) = (0, 0, 0);
        for (var d = 0; d < taken.Length; d++)
        {
            sum += taken[d];
            if (taken[d] == 0) continue;
            worst = Math.Max(worst, sum - there[d]);
            if (beyondHaste[d]) missing = Math.Max(missing, sum - there[d]);
        }

        (Cost, Missing) = (expressPrice * worst, missing);
    }
}
