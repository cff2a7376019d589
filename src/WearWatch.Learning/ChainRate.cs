using WearWatch.Trends;
using WearWatch.Wear;

namespace WearWatch.Learning;

/// <summary>The wear rate that one chain's own readings show, or why they show none.</summary>
/// <remarks>
/// A Tukey line through the readings after run-in and before acceleration. Standard error of ln b:
/// <c>1.3 s / (b sqrt(Sxx))</c>; the 1.3 allows for what the biweight and the estimated scale leave out.
/// </remarks>
public abstract record ChainRate
{
    /// <summary>Run-in is over after so many running hours: its decay of about 35 h has fallen to 6 %.</summary>
    public const double RunInOverHours = 100;

    /// <summary>Beyond this elongation a chain may have begun to wear faster.</summary>
    public const double StraightUpToPercent = 2.0;

    /// <summary>Fewer readings than this show no rate.</summary>
    public const int FewestReadings = 3;

    /// <summary>A rate that is less well known than this (of ln) teaches nothing.</summary>
    public const double WorstStandardError = 0.5;

    private ChainRate()
    {
    }

    /// <summary>The readings show a rate.</summary>
    /// <param name="LogRate">ln of the wear rate in percent per 1,000 running hours.</param>
    /// <param name="StandardError">Standard error of it.</param>
    /// <param name="StartPercent">Where the line starts at zero hours, in percent.</param>
    public sealed record Shown(double LogRate, double StandardError, double StartPercent) : ChainRate;

    /// <summary>The readings show none.</summary>
    /// <param name="Why">The reason.</param>
    public sealed record NotShown(NoRateReason Why) : ChainRate;

    /// <summary>Reads the rate off one chain's observations.</summary>
    public static ChainRate Of(IReadOnlyList<Observation> observations)
    {
        Observation[] straight =
        [
            .. observations.Where(o => o.HoursSinceFitting >= RunInOverHours && o.ElongationPercent <= StraightUpToPercent)
        ];
        if (straight.Length < FewestReadings) return new NotShown(NoRateReason.TooFewReadings);

        double[] thousandHours = [.. straight.Select(o => o.HoursSinceFitting / 1000)];
        double[] elongations = [.. straight.Select(o => o.ElongationPercent)];
        var toolScatter = Median.Of([.. straight.Select(o => o.ScatterPercent)]);
        if (TukeyLine.Fit(thousandHours, elongations, toolScatter) is not TrendFit<TukeyLine>.Fitted { Trend: var trend })
            return new NotShown(NoRateReason.AllAtOneTime);
        if (!(trend.Slope > 0)) return new NotShown(NoRateReason.NoWear);

        var standardError = 1.3 * trend.Scale / (trend.Slope * Math.Sqrt(trend.Line.SumSquaresX));
        return standardError > WorstStandardError
            ? new NotShown(NoRateReason.TooUncertain)
            : new Shown(Math.Log(trend.Slope), standardError, trend.Intercept);
    }
}
