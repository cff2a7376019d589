using WearWatch.Planning.Costs;
using WearWatch.Planning.Plans;
using WearWatch.Planning.Swaps;

namespace WearWatch.Planning.Measuring;

/// <summary>What one more reading of a chain is worth: by how much it lowers the expected cost of the best swap.</summary>
/// <remarks>
/// The expected value of sample information: the cost of the shutdown that is best by what is known, less the mean, over what the
/// reading may show, of the cost of the shutdown that would then be best. Raiffa and Schlaifer, Applied Statistical Decision
/// Theory (1961; from memory). Crews, spares and other chains are left out: they move a swap, seldom the worth of knowing.
/// </remarks>
public static class ReadingValue
{
    /// <summary>The worth of a reading taken now, in the plant's money; not negative.</summary>
    /// <param name="task">The chain as it stands.</param>
    /// <param name="outcomes">What it would be after each reading, with probabilities that sum to one.</param>
    /// <param name="windowHours">Running hours from now to each shutdown of its line; may be empty.</param>
    /// <param name="laterHours">Running hours from now to the next chance after the horizon.</param>
    /// <param name="costs">What things cost.</param>
    public static double Of(
        SwapTask task, IEnumerable<(double Probability, HoursToLimit Left)> outcomes, IReadOnlyList<double> windowHours,
        double laterHours, PlanningCosts costs)
    {
        return Math.Max(0, CostOfBest(task.Left) - outcomes.Sum(o => o.Probability * CostOfBest(o.Left)));

        double CostOfBest(HoursToLimit left)
        {
            var known = task with { Left = left };
            return windowHours.Select(hours => OwnCost.Of(known, hours, costs).Total)
                .Append(OwnCost.After(known, laterHours, costs).Total).Min();
        }
    }
}
