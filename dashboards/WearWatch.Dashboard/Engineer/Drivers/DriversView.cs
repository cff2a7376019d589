using WearWatch.Learning;

namespace WearWatch.Dashboard.Engineer.Drivers;

/// <summary>What the page of the drivers of wear shows.</summary>
public sealed record DriversView
{
    /// <summary>So many chains are listed on either side.</summary>
    public const int MostListed = 12;

    public required string Version { get; init; }

    public required DateTimeOffset TrainedAt { get; init; }

    public required FleetModelReport Report { get; init; }

    /// <summary>Effects of what stands on the cards; the strongest first.</summary>
    public required IReadOnlyList<DriverLine> Drivers { get; init; }

    /// <summary>Effects of the lines, beyond what the cards tell.</summary>
    public required IReadOnlyList<DriverLine> Lines { get; init; }

    /// <summary>Effects of the supplier's lots, the worst first, held back by how few chains there are of each.</summary>
    public required IReadOnlyList<DriverLine> Lots { get; init; }

    /// <summary>How the typical chain's rate goes with load and with speed.</summary>
    public required IReadOnlyList<PartialEffect> Partial { get; init; }

    /// <summary>Chains that surely wear faster than expected, the worst first.</summary>
    public required IReadOnlyList<AgainstExpectation> Fast { get; init; }

    /// <summary>Chains that surely wear slower than expected, the best first.</summary>
    public required IReadOnlyList<AgainstExpectation> Slow { get; init; }

    /// <summary>How much of the spread of ln rate between unseen chains the model explains, 0 to 1.</summary>
    public double Explained => Math.Max(0, 1 - Square(UnseenError) / Square(Report.MeanOnlyError));

    private double UnseenError => Report.UsesTrees && Report.LineAndTreesError is { } trees ? trees : Report.LineError;

    private static double Square(double value) => value * value;
}
