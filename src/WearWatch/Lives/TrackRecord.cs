using WearWatch.Trends;

namespace WearWatch.Lives;

/// <summary>
/// How a set of forecasts turned out. Shares of error and lateness count an unanswered one as a miss; the rest leave it out.
/// </summary>
/// <remarks>
/// Several forecasts of one life share its fate. The bands are honest only for a set with one forecast a life, such as all those
/// at the same share of life.
/// </remarks>
public sealed record TrackRecord
{
    /// <summary>An error of at most this share of the true hours left counts as close.</summary>
    public const double CloseError = 0.25;

    private static readonly int[] CalibrationPercents = [5, 10, 20, 25, 30, 40, 50, 60, 70, 75, 80, 90, 95];

    private TrackRecord()
    {
    }

    /// <summary>How many forecasts there were.</summary>
    public int Count => Answered.Of;

    /// <summary>Those that named a middle.</summary>
    public required ObservedShare Answered { get; init; }

    /// <summary>Median relative error of the hours left; above zero is late. Not a number when none answered.</summary>
    public required double MedianError { get; init; }

    /// <summary>Median of its size without sign.</summary>
    public required double MedianAbsoluteError { get; init; }

    /// <summary>Those within <see cref="CloseError"/>.</summary>
    public required ObservedShare Close { get; init; }

    /// <summary>Late warnings.</summary>
    public required ObservedShare Late { get; init; }

    /// <summary>Those whose 50 % interval held.</summary>
    public required ObservedShare Held50 { get; init; }

    /// <summary>Those whose 90 % interval held.</summary>
    public required ObservedShare Held90 { get; init; }

    /// <summary>Those whose limit came before the planner's 5 % date.</summary>
    public required ObservedShare EndedBeforeInterval { get; init; }

    /// <summary>Those whose limit came after the 95 % date.</summary>
    public required ObservedShare EndedAfterInterval { get; init; }

    /// <summary>Median width of the 90 % interval over the true hours left.</summary>
    public required double MedianWidth { get; init; }

    /// <summary>Stated against observed shares.</summary>
    public required IReadOnlyList<CalibrationPoint> Calibration { get; init; }

    /// <summary>Sums up forecasts.</summary>
    public static TrackRecord Of(IReadOnlyCollection<ScoredForecast> forecasts)
    {
        var answered = forecasts.Where(f => f.Answered).ToList();
        return new TrackRecord
        {
            Answered = new(answered.Count, forecasts.Count),
            MedianError = MedianOf(answered.Select(f => f.RelativeError!.Value)),
            MedianAbsoluteError = MedianOf(answered.Select(f => Math.Abs(f.RelativeError!.Value))),
            Close = ObservedShare.In(forecasts, f => f.RelativeError is { } error && Math.Abs(error) <= CloseError),
            Late = ObservedShare.In(forecasts, f => f.IsLateWarning),
            Held50 = ObservedShare.In(answered, f => f.Held50),
            Held90 = ObservedShare.In(answered, f => f.Held90),
            EndedBeforeInterval = ObservedShare.In(answered, f => f.EndedBeforeInterval),
            EndedAfterInterval = ObservedShare.In(answered, f => f.EndedAfterInterval),
            MedianWidth = MedianOf(answered.Select(f => f.RelativeWidth)),
            Calibration = [.. CalibrationPercents.Select(p =>
                new CalibrationPoint(p / 100.0, ObservedShare.In(answered, f => f.ReachedBy(p))))],
        };
    }

    private static double MedianOf(IEnumerable<double> values)
    {
        double[] all = [.. values];
        return all.Length == 0 ? double.NaN : Median.Of(all);
    }
}
