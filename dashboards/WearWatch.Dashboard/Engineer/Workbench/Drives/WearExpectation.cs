using WearWatch.Dashboard.Kit.Words;
using WearWatch.Plant.Bench;

namespace WearWatch.Dashboard.Engineer.Workbench.Drives;

/// <summary>The wear to expect from a drive's figures alone, drawn on a scale of hours that multiplies.</summary>
/// <param name="Rate">The middle rate and the range of nine in ten.</param>
/// <param name="Hours">Running hours from new to the limit, likewise.</param>
/// <param name="BandFrom">Where the band of nine in ten begins, in percent of the scale's width.</param>
/// <param name="BandTo">Where it ends.</param>
/// <param name="Middle">Where its middle stands.</param>
/// <param name="Basis">What it rests on.</param>
public sealed record WearExpectation(Phrase Rate, Phrase Hours, double BandFrom, double BandTo, double Middle, Phrase Basis)
{
    private const double ScaleFromHours = 100;
    private const double ScaleToHours = 1_000_000;

    /// <summary>The hours that are written under the scale, and where.</summary>
    public static IReadOnlyList<(string Words, double At)> Ticks =>
        [.. new[] { 100.0, 1_000, 10_000, 100_000, 1_000_000 }.Select(h => (Show.Hours(h), At(h)))];

    public static WearExpectation? Of(DriveCalculation worked)
    {
        if (worked is not { ExpectedRate: { } rate, ExpectedHours: { } hours, Prior: { } prior }) return null;
        return new WearExpectation(
            $"{Show.Rate(rate.Middle)}; nine of ten such drives lie between {Show.RateFigure(rate.Slow)} and "
            + $"{Show.RateFigure(rate.Fast)}.",
            $"{Rounded(hours.Early):#,0} h to {Rounded(hours.Late):#,0} h, the middle at {Rounded(hours.Middle):#,0} h, from new "
            + $"to the limit of {worked.Limits.Governing.Percent:0.##} %.",
            At(hours.Early), At(hours.Late), At(hours.Middle), prior.Source);
    }

    private static double At(double hours) =>
        100 * Math.Clamp(Math.Log(hours / ScaleFromHours) / Math.Log(ScaleToHours / ScaleFromHours), 0, 1);

    /// <summary>Two digits: the width would make any more of them a lie.</summary>
    private static double Rounded(double value)
    {
        var step = Math.Pow(10, Math.Floor(Math.Log10(value)) - 1);
        return Math.Round(value / step) * step;
    }
}
