using System.Text.Json.Nodes;
using WearWatch.Chains;
using WearWatch.Dashboard.Api.Lists;
using WearWatch.Dashboard.Kit.Answers;
using WearWatch.Plant.Bench;

namespace WearWatch.Dashboard.Api;

/// <summary>
/// The calculators for programs. They take the names of the pages' addresses, so that a page's address is a request too.
/// </summary>
internal static class BenchApi
{
    private const int UsualTypes = 100;

    public static void Map(IEndpointRouteBuilder api)
    {
        var bench = api.MapGroup("").WithTags("Workbench");
        bench.MapGet("/gauge", Gauge)
            .WithSummary("A length over pitches: elongation, verdict, uncertainty budget, pitches to measure")
            .WithDescription("type or pitch_mm; pitches; length (several with semicolons) in unit mm or in, or inside and "
                + "outside; tool, tape_class, from_hook, largest_error_mm; first_link; temperature_c, tool_temperature_c; "
                + "new_length, same_tool; limit_pct or what /limit takes; confirmed.")
            .Produces<GaugeJson>().ProducesValidationProblem(422);
        bench.MapGet("/link-gauge", Links)
            .WithSummary("Measures of a round link: verdict by the worst, each measure against its own limit")
            .WithDescription("type, or pitch_mm with family and link_diameter_new; one_link, over_links, d1, d2 in unit; links, "
                + "outer_edges, unused_links; one_link_limit, over_links_limit, diameter_limit, diameter_limit_in, table_source; "
                + "else link_use and region; tool, lifts.")
            .Produces<LinkGaugeJson>().ProducesValidationProblem(422);
        bench.MapGet("/limit", Limit).WithSummary("At which elongation a chain is to be replaced, and which rules say so")
            .WithDescription("type or family; teeth (17,75); fixed_centres, parallel, timing, positioning, high_performance, "
                + "lifts; take_up_mm with chain_pitches and pitch_mm; elongation_pct.")
            .Produces<LimitJson>().ProducesValidationProblem(422);
        bench.MapGet("/drive", Drive).WithSummary("What a drive of two sprockets does to its chain")
            .WithDescription("type, or pitch_mm with strands, pin_mm, joint_area_mm2, tensile_kn; teeth, driven_teeth; rpm or "
                + "speed (m/s, or 76 m/h); power (kW, or 40 hp); pitches or centre (mm, or 40 in); mass_kg_m; idlers; "
                + "carried_kg, friction; load, mover; lubrication, ambient_c; and what /limit takes.")
            .Produces<DriveJson>().ProducesValidationProblem(422);
        bench.MapGet("/lubrication", Oil).WithSummary("How, with what, how much and how often a chain is to be lubricated")
            .WithDescription("type, or pitch_mm with family and strands; speed (m/s, or 250 ft/min); ambient_c; method, "
                + "place, material, lubrication, dust, interval_h, surroundings_factor.")
            .Produces<ChainOilJson>().ProducesValidationProblem(422);
        bench.MapGet("/chain-types", Types).WithSummary("Chain types, each value with its source and whether it was verified")
            .WithDescription("find, family and pitch_mm narrow.").Produces<ChainTypePageJson>().Produces(304)
            .ProducesValidationProblem(422);
        bench.MapGet("/chain-types/{designation}", OneType).WithSummary("One chain type").Produces<ChainTypeJson>()
            .ProducesProblem(404);
    }

    private static IResult Gauge(HttpRequest request) => Answer(GaugeBench.Answer(Read(request)), GaugeJson.Of);

    private static IResult Links(HttpRequest request) => Answer(LinkBench.Answer(Read(request)), LinkGaugeJson.Of);

    private static IResult Limit(HttpRequest request) => Answer(LimitBench.Answer(Read(request)), LimitJson.Of);

    private static IResult Drive(HttpRequest request) => Answer(DriveBench.Answer(Read(request)), DriveJson.Of);

    private static IResult Oil(HttpRequest request) => Answer(OilBench.Answer(Read(request)), ChainOilJson.Of);

    private static IResult Types(HttpContext http, [AsParameters] ListWish wish)
    {
        var asked = Read(http.Request);
        var found = Engineer.Workbench.ChainTypes.TypeSearch.Of(asked).Found;
        var skip = asked.Whole("skip", 0, int.MaxValue) ?? 0;
        return asked.Wrong.Count > 0
            ? Problems.Refused(asked.Wrong)
            : ListPaging.Of(
                http, wish with { Take = wish.Take ?? UsualTypes }, [.. found.Skip(skip)], t => ListKey.Of(t.Designation),
                ChainTypeJson.Of,
                types => new JsonObject { ["total"] = found.Count, ["skip"] = skip, ["chain_types"] = types });
    }

    private static IResult OneType(string designation) => ChainCatalogue.Find(designation) is { } type
        ? Results.Ok(ChainTypeJson.Of(type))
        : Problems.NotFound($"No chain type is called '{designation}'.");

    private static Asked Read(HttpRequest request) =>
        new(name => request.Query.TryGetValue(name, out var values) ? values.ToString() : null);

    private static IResult Answer<TResult, TJson>(BenchAnswer<TResult> answer, Func<TResult, TJson> toJson) => answer switch
    {
        BenchAnswer<TResult>.Answered answered => Results.Ok(toJson(answered.Result)),
        BenchAnswer<TResult>.Refused refused => Problems.Refused(refused.Refusals),
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
