using WearWatch.Chains;

namespace WearWatch.Learning;

/// <summary>How a card becomes a row of the regression, as learned from the cards of the fleet.</summary>
/// <remarks>
/// Columns are centred on the fleet's mean, so that what a card does not tell stands at zero, the fleet's average, and the first
/// coefficient is the average chain's. Where some chains of the fleet do not tell an input, a column marks them: not telling
/// may itself mean something. Lines have a column each and no ordinary one among them.
/// </remarks>
/// <param name="Inputs">The inputs that some chain of the fleet tells.</param>
/// <param name="Lines">Names of the lines with at least two chains, in ordinal order.</param>
internal sealed record DutyDesign(IReadOnlyList<LearnedInput> Inputs, IReadOnlyList<string> Lines)
{
    private const int FewestChainsOfALine = 2;

    /// <summary>The average chain, then the inputs' columns, then the lines.</summary>
    public int Width => FirstLine + Lines.Count;

    /// <summary>Where the columns of the lines begin.</summary>
    public int FirstLine { get; } = 1 + Inputs.Sum(i => i.Width);

    /// <summary>Names of the columns.</summary>
    public IEnumerable<string> ColumnNames => ["average chain", .. Inputs.SelectMany(i => i.ColumnNames), .. Lines.Select(l => $"line {l}")];

    /// <summary>Learns from the cards of a fleet.</summary>
    public static DutyDesign Of(IReadOnlyList<ChainCard> cards) => new(
        [.. DutyInput.All.Select(input => LearnedInput.Of(input, cards)).OfType<LearnedInput>()],
        [
            .. cards.Where(c => c.Line.Length > 0).GroupBy(c => c.Line, StringComparer.Ordinal)
                .Where(line => line.Count() >= FewestChainsOfALine).Select(line => line.Key).Order(StringComparer.Ordinal)
        ]);

    /// <summary>The row of a card.</summary>
    public double[] Row(ChainCard card)
    {
        var row = new double[Width];
        row[0] = 1;
        var column = 1;
        foreach (var input in Inputs)
        {
            input.Write(card, row.AsSpan(column, input.Width));
            column += input.Width;
        }

        if (LineIndex(card) is >= 0 and var line) row[FirstLine + line] = 1;
        return row;
    }

    /// <summary>Whether the card's line is one of the fleet's.</summary>
    public bool KnowsLineOf(ChainCard card) => LineIndex(card) >= 0;

    /// <summary>How much the rate may differ from the average through what the card does not tell (variance of ln rate).</summary>
    public double VarianceOfUntold(ChainCard card, IReadOnlyList<double> coefficients)
    {
        var variance = 0.0;
        var column = 1;
        foreach (var input in Inputs)
        {
            if (!input.IsToldBy(card)) variance += input.VarianceThrough(coefficients, column);
            column += input.Width;
        }

        return variance;
    }

    /// <summary>Which of the card's inputs lie outside what the fleet has shown, in words.</summary>
    public IReadOnlyList<string> OutsideTrainingRange(ChainCard card) =>
        [.. Inputs.Where(input => input.IsOutside(card)).Select(input => input.Name)];

    private int LineIndex(ChainCard card)
    {
        for (var i = 0; i < Lines.Count; i++)
        {
            if (string.Equals(Lines[i], card.Line, StringComparison.Ordinal)) return i;
        }

        return -1;
    }
}
