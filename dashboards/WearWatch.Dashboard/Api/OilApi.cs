using WearWatch.Dashboard.Api.Lists;
using WearWatch.Dashboard.Api.Wire;
using WearWatch.Dashboard.Technician.Oiling;
using WearWatch.Plant.Oiling;

namespace WearWatch.Dashboard.Api;

/// <summary>The oil round for programs.</summary>
internal static class OilApi
{
    public static void Map(IEndpointRouteBuilder api)
    {
        api.MapGet("/lubrication/due", DueAsync).WithTags("Lubrication")
            .WithSummary("Chains whose lubrication is due within a week, by line")
            .AnswersList<OilDueJson>();
        api.MapGet("/lubrication/used", UsedAsync).WithTags("Lubrication")
            .WithSummary("Oil used in the last twelve months, by grade and month")
            .AnswersList<OilUsedJson>();
    }

    private static async Task<IResult> DueAsync(
        HttpContext http, DueQuery due, [AsParameters] ListWish wish, CancellationToken ct)
    {
        var chains = (await due.AskAsync(ct)).Chains;
        return ListPaging.Of(
            http, wish,
            [.. chains.OrderBy(c => c.Line, StringComparer.Ordinal).ThenBy(c => c.Name, StringComparer.Ordinal)],
            c => ListKey.Of(c.Line, c.Name), ToJson);
    }

    private static async Task<IResult> UsedAsync(
        HttpContext http, OilConsumption consumption, [AsParameters] ListWish wish, CancellationToken ct) => ListPaging.Of(
        http, wish, await consumption.AskAsync(ct), u => ListKey.Of(ListKey.Falling(u.Month.DayNumber), u.Grade),
        u => new OilUsedJson(u.Month, u.Grade, u.Oilings, u.Millilitres, u.WithoutAmount));

    private static OilDueJson ToJson(DueChain chain) => new()
    {
        Chain = chain.Name,
        Line = chain.Line,
        Position = chain.Position,
        State = Tokens.Of(chain.State),
        DueAt = chain.At,
        LookAtOiler = chain.LooksAtOiler,
        Grade = chain.Grade,
        Missed = chain.Missed,
        Warning = chain.Advice.Warning is { } warning ? T[warning] : null,
    };
}
