using System.Text.Json;

namespace WearWatch.Tests.Trends;

/// <summary>Files of tests/data/regression.</summary>
internal static class RegressionData
{
    public static JsonElement Json(string file) => JsonDocument.Parse(File.ReadAllText(PathOf(file))).RootElement;

    public static string PathOf(string file) => Path.Combine(AppContext.BaseDirectory, "data", "regression", file);

    public static double[] Numbers(this JsonElement element, string property) =>
        [.. element.GetProperty(property).EnumerateArray().Select(v => v.GetDouble())];

    public static double Number(this JsonElement element, string property) => element.GetProperty(property).GetDouble();

    public static JsonElement Case(string file, string id) =>
        Json(file).GetProperty("cases").EnumerateArray().Single(c => c.GetProperty("id").GetString() == id);
}
