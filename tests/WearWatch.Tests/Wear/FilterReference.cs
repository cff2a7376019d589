using System.Text.Json;
using WearWatch.Wear;

namespace WearWatch.Tests.Wear;

/// <summary>The three chains of tests/data/wear/filter_reference.json: an independent implementation, step by step.</summary>
internal static class FilterReference
{
    private static readonly JsonElement File = JsonDocument.Parse(
        System.IO.File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "data", "wear", "filter_reference.json"))).RootElement;

    public static JsonElement Chain(string id) =>
        File.GetProperty("chains").EnumerateArray().Single(c => c.GetProperty("id").GetString() == id);

    public static WearPrior Prior(JsonElement chain)
    {
        var constants = File.GetProperty("constants");
        return new(
            chain.GetProperty("prior_rho").GetDouble(), constants.GetProperty("tau2").GetDouble(),
            constants.GetProperty("ma").GetDouble(), constants.GetProperty("sa").GetDouble(), $"filter_reference.json");
    }

    public static IReadOnlyList<Observation> Observations(JsonElement chain) =>
        [.. chain.GetProperty("single").EnumerateArray().Select((s, i) => new Observation(
            s.GetProperty("h").GetDouble(), s.GetProperty("y").GetDouble(), chain.GetProperty("sd_pct").GetDouble(), i))];

    public static IEnumerable<JsonElement> Steps(JsonElement chain, string name) => chain.GetProperty(name).EnumerateArray();

    public static double Number(this JsonElement step, string name) => step.GetProperty(name).GetDouble();

    public static IEnumerable<double> Numbers(this JsonElement step, string name) =>
        step.GetProperty(name).EnumerateArray().Select(x => x.GetDouble());
}
