using WearWatch.Chains;

namespace WearWatch.Learning;

/// <summary>One input as the fleet shows it: its average, its range and how it varies.</summary>
/// <param name="Name">Its name, by which <see cref="DutyInput.All"/> has it.</param>
/// <param name="Mean">Mean of each of its columns over the chains that tell it.</param>
/// <param name="Least">Least value of each column.</param>
/// <param name="Greatest">Greatest value of each column.</param>
/// <param name="Covariance">Covariance of its columns over the chains that tell it, row by row.</param>
/// <param name="UntoldShare">Share of the chains that do not tell it; where above zero, a last column marks them.</param>
internal sealed record LearnedInput(
    string Name,
    IReadOnlyList<double> Mean,
    IReadOnlyList<double> Least,
    IReadOnlyList<double> Greatest,
    IReadOnlyList<double> Covariance,
    double UntoldShare)
{
    private readonly DutyInput input = DutyInput.All.Single(i => i.Name == Name);

    /// <summary>Whether it has a column for each value that this program knows, each kind of chain among them.</summary>
    public bool FitsThisProgram => Mean.Count == input.Columns.Count;

    /// <summary>Number of columns, with the one that marks the untold where there is one.</summary>
    public int Width => Mean.Count + (UntoldShare > 0 ? 1 : 0);

    /// <summary>Names of the columns.</summary>
    public IEnumerable<string> ColumnNames => UntoldShare > 0 ? [.. input.Columns, $"{Name} not told"] : input.Columns;

    /// <summary>Learns an input from the fleet; null when no chain tells it.</summary>
    public static LearnedInput? Of(DutyInput input, IReadOnlyList<ChainCard> cards)
    {
        double[][] told = [.. cards.Select(input.ValuesOf).OfType<double[]>()];
        if (told.Length == 0) return null;

        double[] Each(Func<IEnumerable<double>, double> of) =>
            [.. input.Columns.Select((_, column) => of(told.Select(v => v[column])))];
        var mean = Each(Enumerable.Average);
        var covariance =
            from i in Enumerable.Range(0, mean.Length)
            from j in Enumerable.Range(0, mean.Length)
            select told.Average(v => (v[i] - mean[i]) * (v[j] - mean[j]));
        return new LearnedInput(
            input.Name, mean, Each(Enumerable.Min), Each(Enumerable.Max), [.. covariance], 1 - told.Length / (double)cards.Count);
    }

    /// <summary>Whether a card tells this input.</summary>
    public bool IsToldBy(ChainCard card) => input.ValuesOf(card) is not null;

    /// <summary>Whether a card's value is above, below or beside all that the fleet has shown.</summary>
    public bool IsOutside(ChainCard card) => input.ValuesOf(card) is { } values
        && values.Where((v, column) => v < Least[column] || v > Greatest[column]).Any();

    /// <summary>Writes a card's columns into a row.</summary>
    public void Write(ChainCard card, Span<double> row)
    {
        var values = input.ValuesOf(card);
        for (var column = 0; column < Mean.Count; column++) row[column] = values is null ? 0 : values[column] - Mean[column];
        if (UntoldShare > 0) row[^1] = (values is null ? 1 : 0) - UntoldShare;
    }

    /// <summary>Variance that the input's effects put into the fleet's rates.</summary>
    /// <param name="coefficients">All coefficients of the regression.</param>
    /// <param name="first">Where this input's begin.</param>
    public double VarianceThrough(IReadOnlyList<double> coefficients, int first)
    {
        var variance = 0.0;
        for (var i = 0; i < Mean.Count; i++)
        {
            for (var j = 0; j < Mean.Count; j++)
                variance += coefficients[first + i] * Covariance[i * Mean.Count + j] * coefficients[first + j];
        }

        return variance;
    }
}
