namespace WearWatch.Planning.Costs;

/// <summary>What stops, breakdowns and haste cost the plant. Every amount is in the plant's own money.</summary>
/// <remarks>
/// The defaults are assumptions to start with (<c>common practice</c>; no published figure was found) and every plant sets its
/// own.
/// </remarks>
public sealed record PlanningCosts
{
    /// <summary>The money in which all amounts are meant, for the screens.</summary>
    public string Money { get; init; } = "EUR";

    /// <summary>What an hour of a stopped line costs, where the line has no figure of its own.</summary>
    public double StoppedLinePerHour { get; init => field = NotNegative(value); } = 400;

    /// <summary>What an hour of a stopped line costs, by line.</summary>
    public IReadOnlyDictionary<string, double> StoppedLinePerHourByLine { get; init; } = new Dictionary<string, double>();

    /// <summary>
    /// Hours that swaps add to a shutdown in which a line is used at all: lock out, take the guards off, start again.
    /// </summary>
    public double StopHours { get; init => field = NotNegative(value); } = 1;

    /// <summary>Hours that a line stands when a chain breaks while it runs.</summary>
    public double BreakdownHours { get; init => field = NotNegative(value); } = 8;

    /// <summary>What a breakdown costs beside the stopped line: damage, call-out, spoiled goods.</summary>
    public double BreakdownExtra { get; init => field = NotNegative(value); } = 1500;

    /// <summary>Mean running hours from the limit to the failure of a chain that is left on. Above zero.</summary>
    /// <remarks>
    /// The model: once past its limit a chain fails with a constant hazard of one over this many running hours; before the limit
    /// it does not fail by wear. No published figure was found, so it is an assumption that the plant sets.
    /// </remarks>
    public double MeanHoursToFailurePastLimit
    {
        get;
        init => field = value is > 0 and <= 1e6
            ? value
            : throw new ArgumentOutOfRangeException(
                nameof(value), value, "The mean hours to failure lie above 0 and at most at 1,000,000 h.");
    } = 2000;

    /// <summary>What an hour of work beyond the crew's hours costs more.</summary>
    public double OvertimePerHour { get; init => field = NotNegative(value); } = 90;

    /// <summary>Surcharge on a part that must be had before its ordinary lead time, as a share of its price.</summary>
    public double ExpressShare { get; init => field = NotNegative(value); } = 0.75;

    /// <summary>How long after the horizon a swap that is not planned gets its next chance.</summary>
    public TimeSpan NextChance { get; init; } = TimeSpan.FromDays(28);

    /// <summary>What an hour of this line standing still costs.</summary>
    public double StoppedPerHour(string line) => StoppedLinePerHourByLine.GetValueOrDefault(line, StoppedLinePerHour);

    /// <summary>What it costs to use a shutdown of a line for swaps at all.</summary>
    public double StopOf(string line) => StopHours * StoppedPerHour(line);

    /// <summary>What a chain that fails while the line runs costs.</summary>
    public double BreakdownOf(string line) => BreakdownHours * StoppedPerHour(line) + BreakdownExtra;

    /// <summary>What it costs that a chain that holds a load is out of use from its hard date.</summary>
    /// <remarks>
    /// Counted as a breakdown that is sure: its line stands without a plan until the chain is renewed. The amount is an
    /// assumption as that of the breakdown is; no proposal weighs it against a shutdown that fits.
    /// </remarks>
    public double OutOfUseOf(string line) => BreakdownOf(line);

    private static double NotNegative(double value) => value is >= 0 and <= 1e12
        ? value
        : throw new ArgumentOutOfRangeException(nameof(value), value, "A cost or a number of hours is not negative.");
}
