namespace WearWatch.Planning.Supply;

/// <summary>How much of a part will be needed by a moment, as a distribution over whole numbers.</summary>
/// <remarks>
/// Each chain needs its quantity with a probability of its own, independently of the others (a Poisson binomial distribution,
/// weighted by the quantities); the probabilities are convolved exactly.
/// </remarks>
public sealed class Demand
{
    private readonly double[] probability;

    /// <param name="needs">Quantity and probability of each chain that may need it.</param>
    public Demand(IReadOnlyCollection<(int Quantity, double Probability)> needs)
    {
        probability = new double[1 + needs.Sum(n => n.Quantity)];
        probability[0] = 1;
        var reached = 0;
        foreach (var (quantity, p) in needs)
        {
            for (var d = reached; d >= 0; d--)
            {
                probability[d + quantity] += p * probability[d];
                probability[d] *= 1 - p;
            }

            reached += quantity;
        }
    }

    /// <summary>The quantity to be expected.</summary>
    public double Mean => probability.Select((p, d) => p * d).Sum();

    /// <summary>The smallest quantity that suffices with at least this probability.</summary>
    public int Quantile(double share)
    {
        var sum = 0.0;
        for (var d = 0; d < probability.Length; d++)
        {
            sum += probability[d];
            if (sum >= share - 1e-12) return d;
        }

        return probability.Length - 1;
    }

    /// <summary>What will be missing, in expectation, when so much is there: <c>E[(D - s)+]</c>.</summary>
    public double ExpectedShortage(int available) => probability.Select((p, d) => p * Math.Max(0, d - available)).Sum();
}
