using WearWatch.Wear;

namespace WearWatch.Dashboard.Technician.Entry;

/// <summary>
/// What a chain's next reading is expected to show, so that a slip is seen while the tape is still on the chain.
/// </summary>
/// <param name="Percent">The elongation to be expected.</param>
/// <param name="DeviationPercent">Standard deviation of what the reading may show, its own uncertainty left out.</param>
public sealed record EntryExpectation(double Percent, double DeviationPercent)
{
    /// <summary>The expectation so many running hours after the last reading.</summary>
    /// <remarks>
    /// <c>e = e0 + r h / 1000</c> with e0 the elongation by the track, r the wear rate, h the hours; the variances of e0 and of
    /// r h add up (JCGM 100, docs/references.md [1]). Without any reading the prior's start and rate serve.
    /// </remarks>
    public static EntryExpectation Of(Assessment assessment, double hoursSinceReading)
    {
        var grown = assessment.RatePercentPer1000Hours * Math.Max(0, hoursSinceReading) / 1000;
        var start = assessment.ElongationPercent ?? assessment.Prior.MeanStartPercent;
        var startDeviation = assessment.ElongationStandardDeviationPercent ?? assessment.Prior.StandardDeviationStartPercent;
        return new EntryExpectation(
            start + grown, Math.Sqrt(startDeviation * startDeviation + Square(grown * assessment.LogRateStandardDeviation)));
    }

    private static double Square(double value) => value * value;
}
