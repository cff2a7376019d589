using System.Globalization;

namespace WearWatch.Benchmarks.Rivals;

/// <summary>
/// A question with its true answer: at a share of its life a chain is asked when it reaches a limit. Hours are since fitting.
/// </summary>
internal sealed record Decision(
    string Chain, double LimitPercent, double LifeShare, int ReadingsKnown, double LastReadingHours, double NowHours,
    double TrueHours)
{
    public static Decision[] Read(string path) =>
        [.. File.ReadLines(path).Skip(1).Select(l => l.Split(',')).Select(r => new Decision(
        r[1], Number(r[2]), Number(r[3]), (int)Number(r[4]), Number(r[5]), Number(r[6]), Number(r[7])))];

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
