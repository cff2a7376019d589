using WearWatch.Chains;

namespace WearWatch.Learning;

/// <summary>How a card becomes a row of the regression, as learned from the cards of the fleet.</summary>
/// <remarks>
/// Columns are centred on the fleet's mean, so that what a card does not tell stands at zero, the fleet's average, and the first
/// coefficient is the average chain's. Where some chains of the fleet do not tell an input, a column marks them: not telling
/// may itself mean something. Lines and lots have a column each and no ordinary one among them (<see cref="CommonOrigin"/>).
/// </remarks>
/// <param name="Inputs">The inputs that some chain of the fleet tells.</param>
/// <param name="Origins">What chains have in common beyond their duty.</param>
internal sealed record DutyDesign(IReadOnlyList<LearnedInput> Inputs, IReadOnlyList<CommonOrigin> Origins)
{
    /// <summary>The average chain, then the inputs' columns, then those of the origins.</summary>
    public int Width => FirstOrigin + Origins.Sum(o => o.Width);

    /// <summary>Where the columns of the origins begin.</summary>
    public int FirstOrigin { get; } = 1 + Inputs.Sum(i => i.Width);

    /// <summary>Names of the columns.</summary>
    public IEnumerable<string> ColumnNames =>
        ["average chain", .. Inputs.SelectMany(i => i.ColumnNames), .. Origins.SelectMany(o => o.ColumnNames)];

    /// <summary>Of each column, what its chains have in common, and its name; both empty for an input.</summary>
    public IEnumerable<(string What, string Member)> ColumnOrigins =>
        [.. Enumerable.Repeat(("", ""), FirstOrigin), .. Origins.SelectMany(o => o.Members.Select(member => (o.What, member)))];

    /// <summary>Learns from the cards of a fleet.</summary>
    /// <param name="cards">The cards.</param>
    /// <param name="inputs">What of them is looked at.</param>
    public static DutyDesign Of(IReadOnlyList<ChainCard> cards, IReadOnlyList<DutyInput> inputs) => new(
        [.. inputs.Select(input => LearnedInput.Of(input, cards)).OfType<LearnedInput>()], [.. CommonOrigin.In(cards)]);

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

        foreach (var origin in Origins)
        {
            if (origin.PlaceOf(card) is >= 0 and var place) row[column + place] = 1;
            column += origin.Width;
        }

        return row;
    }

    /// <summary>
    /// How much the rate may differ from the average through what the card does not tell (variance of ln rate).
    /// </summary>
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
}
