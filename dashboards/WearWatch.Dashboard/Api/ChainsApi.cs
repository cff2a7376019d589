using System.Text.Json.Nodes;
using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using WearWatch.Chains.Families;
using WearWatch.Dashboard.Api.Lists;
using WearWatch.Dashboard.Api.Wire;
using WearWatch.Dashboard.Kit.Answers;
using WearWatch.Dashboard.Kit.Lifting;
using WearWatch.Dashboard.Overview.ChainList;
using WearWatch.Plant.Settings;
using WearWatch.Storage;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Api;

internal static class ChainsApi
{
    private const int UsualRows = 100;

    public static void Map(IEndpointRouteBuilder api)
    {
        var chains = api.MapGroup("/chains").WithTags("Chains");
        chains.MapGet("", ListAsync).WithSummary("A part of the list of chains")
            .WithDescription("With cursor (empty for the first page) the chains come by name; skip cuts any other order.")
            .Produces<ChainPageJson>().Produces(304)
            .ProducesValidationProblem(422);
        chains.MapGet("/{chain}", OneAsync).WithSummary("One chain as the register has it").Produces<ChainCardJson>()
            .ProducesProblem(404);
        chains.MapGet("/{chain}/forecast", ForecastAsync).WithSummary("A chain's newest forecast with its percentiles")
            .Produces<ForecastJson>().ProducesProblem(404);
    }

    /// <summary>The row of a chain's name.</summary>
    public static Task<ChainRow?> FindAsync(this WearDb db, string chain, CancellationToken ct) =>
        db.Chains.AsNoTracking().FirstOrDefaultAsync(c => c.Name == chain, ct);

    /// <summary>The answer for a name that no chain has.</summary>
    public static IResult Unknown(string chain) => Problems.NotFound($"No chain is called '{chain}'.");

    private static async Task<IResult> ListAsync(
        ChainListQuery query, LiftingStatesQuery lifting, string? search,
        string? line, string? condition, string? family, [FromQuery(Name = "due_before")]
            DateOnly? dueBefore,
        [FromQuery(Name = "tension_before")]
            DateOnly? tensionBefore,
        string? sort, bool? lifts, bool? descending, int? skip, [AsParameters] ListWish wish, HttpContext http,
        CancellationToken ct)
    {
        if (skip is < 0) return Problems.Refused("skip", $"0 or more.");
        var byName = wish.Cursor is not null;
        if (byName && (skip is not null || descending is true || Tokens.Read<ChainSort>(sort) is not (null or ChainSort.Name)))
            return Problems.Refused("cursor", $"By cursor the chains come by name: leave skip, sort and descending out.");
        var told = ConditionWords.Find(condition);
        if (condition is not null && told is null)
            return Problems.Refused("condition", $"One of {string.Join(", ", ConditionWords.All.Select(w => w.Wire))}.");
        if (family is not null && ChainFamily.Find(family) is null)
            return Problems.Refused("family", $"One of {string.Join(", ", ChainFamily.All)}.");
        if (dueBefore is { } due && !Clocks.IsPlausible(due.ToDateTime(default)))
            return Problems.Refused("due_before", Clocks.Plausible);
        if (tensionBefore is { } tension && !Clocks.IsPlausible(tension.ToDateTime(default)))
            return Problems.Refused("tension_before", Clocks.Plausible);
        if (sort is not null && Tokens.Read<ChainSort>(sort) is null)
            return Problems.Refused("sort", $"One of {Tokens.All<ChainSort>()}.");
        var filter = new ChainFilter
        {
            Search = search ?? "",
            Line = line,
            Condition = told?.Condition,
            Lifts = told is { HoldsLoad: true } ? true : lifts,
            Family = ChainFamily.Find(family),
            DueBefore = dueBefore,
            TensionBefore = tensionBefore,
            Sort = byName ? ChainSort.Name : Tokens.Read<ChainSort>(sort) ?? ChainSort.Early,
            After = string.IsNullOrEmpty(wish.Cursor) ? null : ListKey.Read(wish.Cursor)?.First,
            Descending = descending ?? false,
        };
        var take = Math.Clamp(wish.Take ?? UsualRows, 1, ListWish.Most);
        var page = await query.AskAsync(filter, skip ?? 0, byName ? take + 1 : take, ct); // one more says that there are more
        if (!byName && (skip ?? 0) + page.Rows.Count is var shown && shown < page.Total)
            http.Response.Headers.Link = NextPage(http.Request, shown);
        var states = await lifting.AskAsync(ct);
        return ListPaging.Of(
            http, wish with { Take = wish.Take ?? UsualRows }, page.Rows, row => ListKey.Of(row.Name),
            row => ToJson(row, states[row.Name]),
            chains => new JsonObject { ["total"] = page.Total, ["skip"] = skip ?? 0, ["chains"] = chains });
    }

    /// <summary>The same question from another place on (RFC 8288).</summary>
    private static string NextPage(HttpRequest request, int skip)
    {
        var query = QueryString.Create(request.Query.Where(q => q.Key != "skip")
            .Append(new("skip", skip.ToString(System.Globalization.CultureInfo.InvariantCulture))));
        return $"<{request.Path}{query}>; rel=\"next\"";
    }

    private static async Task<IResult> OneAsync(
        IDbContextFactory<WearDb> databases, LiftingStatesQuery lifting, string chain, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        return await db.FindAsync(chain, ct) is { } row
            ? Results.Ok(new ChainCardJson
            {
                Chain = row.Name,
                Card = row.ToCard(),
                Lifting = LiftingNowJson.Of((await lifting.AskAsync(ct))[row.Name]),
            })
            : Unknown(chain);
    }

    private static async Task<IResult> ForecastAsync(
        IDbContextFactory<WearDb> databases, LiftingStatesQuery lifting, string chain, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        if (await db.FindAsync(chain, ct) is not { } row) return Unknown(chain);
        return await db.Forecasts.AsNoTracking().FirstOrDefaultAsync(f => f.ChainId == row.Id && f.IsLatest, ct) is { } forecast
            ? Results.Ok(ToJson(row, forecast, (await lifting.AskAsync(ct))[row.Name]))
            : Problems.NotFound($"'{chain}' has no forecast yet.");
    }

    private static ChainJson ToJson(ChainListLine row, LiftingNow? lifting) => new()
    {
        Chain = row.Name,
        Line = row.Line,
        Position = row.Position,
        ChainType = row.ChainType,
        Family = row.Family.Name,
        Condition = row.Condition.Wire,
        ElongationPct = row.ElongationPct,
        RatePctPer1000h = row.RatePctPer1000H,
        LimitPct = row.LimitPct,
        LimitReason = row.LimitReason is { } reason ? Tokens.Of(reason) : null,
        LimitedBy = row.Sooner?.Cause.ToString(),
        EarlyDate = row.EarlyDate,
        TensionBy = row.TensionBy,
        NextOilingAt = row.NextOilingAt,
        OutOfUseBy = row.OutOfUseBy,
        PlannedSwap = row.PlannedSwap,
        LastReadingAt = row.LastReadingAt,
        Lifting = LiftingNowJson.Of(lifting),
    };

    private static ForecastJson ToJson(ChainRow chain, ForecastRow row, LiftingNow? lifting)
    {
        var forecast = row.ToForecast();
        return new ForecastJson
        {
            Chain = chain.Name,
            MadeAt = row.MadeAt,
            Model = row.ModelVersion,
            ReadingsUsed = row.ReadingsUsed,
            Condition = ConditionWords.Of(row.Condition, chain.HoldsLoad).Wire,
            ElongationPct = row.ElongationPct,
            ElongationSdPct = row.ElongationSdPct,
            RatePctPer1000h = row.RatePctPer1000H,
            LimitPct = row.LimitPct,
            LimitReason = Tokens.Of(row.LimitReason),
            LimitSource = row.LimitSource,
            ProbabilityPassed = row.ProbabilityPassed,
            HoursAtLastReading = row.HoursAtLastReading,
            HoursNow = row.HoursNow,
            RemainingHP05 = forecast.EarlyHours,
            RemainingHP50 = forecast.MiddleHours,
            RemainingHP95 = forecast.LateHours,
            RemainingHPercentiles = [.. Enumerable.Range(1, 99).Select(forecast.Quantile)],
            LimitedBy = row.Sooner?.Cause.ToString(),
            EarlyDate = row.EarlyDate,
            MiddleDate = row.MiddleDate,
            LateDate = row.LateDate,
            NextOilingAt = row.NextOilingAt,
            OutOfUseBy = row.OutOfUseBy,
            Lifting = LiftingNowJson.Of(lifting),
        };
    }
}
