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
            .Produces<IReadOnlyList<OilDueJson>>();
        api.MapGet("/lubrication/used", UsedAsync).WithTags("Lubrication")
            .WithSummary("Oil used in the last twelve months, by grade and month")
            .Produces<IReadOnlyList<OilUsedJson>>();
    }

    private static async Task<IResult> DueAsync(DueQuery due, CancellationToken ct) => Results.Ok<IReadOnlyList<OilDueJson>>(
        [.. (await due.AskAsync(ct)).Chains.Select(c => new OilDueJson
        {
            Chain = c.Name,
            Line = c.Line,
            Position = c.Position,
            State = Tokens.Of(c.State),
            DueAt = c.At,
            LookAtOiler = c.LooksAtOiler,
            Grade = c.Grade,
            Missed = c.Missed,
            Warning = c.Advice.Warning is { } warning ? T[warning] : null,
        })]);

    private static async Task<IResult> UsedAsync(OilConsumption consumption, CancellationToken ct) =>
        Results.Ok<IReadOnlyList<OilUsedJson>>(
        [.. (await consumption.AskAsync(ct))
            .Select(u => new OilUsedJson(u.Month, u.Grade, u.Oilings, u.Millilitres, u.WithoutAmount))]);
}
