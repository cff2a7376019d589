using System.Globalization;
using System.Text.Json;
using WearWatch.Gauging.Studies;

namespace WearWatch.Tests.Gauging.Studies;

/// <summary>The published studies of tests/data/gauging.</summary>
internal static class PublishedStudies
{
    public static CrossedStudy Aiag() => Balanced(
        File.ReadLines(PathOf("gauge_rr_aiag.csv")).Skip(1).Select(line => line.Split(','))
            .Select(c => new StudyReading(c[2], c[0], double.Parse(c[3], CultureInfo.InvariantCulture))));

    public static CrossedStudy Vardeman() => Balanced(
        Json("gauge_rr_vardeman.json").GetProperty("data").EnumerateArray()
            .Select(r => new StudyReading(
                r.GetProperty("part").ToString(), r.GetProperty("op").ToString(), r.GetProperty("w").GetDouble())));

    public static JsonElement Json(string file) => JsonDocument.Parse(File.ReadAllText(PathOf(file))).RootElement;

    public static CrossedStudy Balanced(IEnumerable<StudyReading> readings) =>
        Assert.IsType<StudyOutcome.Balanced>(CrossedStudy.Of(readings)).Study;

    private static string PathOf(string file) => Path.Combine(AppContext.BaseDirectory, "data", "gauging", file);
}
