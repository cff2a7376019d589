using System.Globalization;
using System.Text.Json;
using WearWatch.Lives;

namespace WearWatch.Tests.Lives;

/// <summary>
/// Published lives with the figures that others computed from them; where each comes from stands in tests/data/lives/SOURCES.md.
/// </summary>
internal static class PublishedLives
{
    private static readonly JsonElement KaplanMeier = Read("kaplan_meier.json");
    private static readonly JsonElement Weibull = Read("weibull_censored.json");

    public static JsonElement LogRank => KaplanMeier.GetProperty("logrank");

    public static JsonElement SurvivalCase(string id) => Case(KaplanMeier, id);

    public static JsonElement WeibullCase(string id) => Case(Weibull, id);

    public static IReadOnlyList<Life> Lives(this JsonElement one) => [.. one.GetProperty("time").Numbers()
        .Zip(one.GetProperty("event").Numbers(), (hours, failed) => A.Life(hours, failed == 1))];

    public static double Number(this JsonElement one, string name) => Number(one.GetProperty(name));

    public static double[] Numbers(this JsonElement list) => [.. list.EnumerateArray().Select(Number)];

    // R wrote its missing values as words.
    private static double Number(JsonElement value) => value.ValueKind == JsonValueKind.Number ? value.GetDouble() : double.NaN;

    private static JsonElement Case(JsonElement file, string id) =>
        file.GetProperty("cases").EnumerateArray().Single(c => c.GetProperty("id").GetString() == id);

    private static JsonElement Read(string file) =>
        JsonDocument.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "data", "lives", file))).RootElement;

    public static IEnumerable<string[]> Rows(string file) =>
        File.ReadLines(Path.Combine(AppContext.BaseDirectory, "data", "lives", file)).Skip(1).Select(line => line.Split(','));

    public static double Parse(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
