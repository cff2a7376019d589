using Microsoft.EntityFrameworkCore;
using WearWatch.Dashboard.Api.Lists;
using WearWatch.Dashboard.Api.Wire;
using WearWatch.Dashboard.Kit.Answers;
using WearWatch.Dashboard.Kit.People;
using WearWatch.Dashboard.Planner;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Planning;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Api;

/// <summary>Work orders of planned swaps: the packages go out, what another system reports of them comes back.</summary>
internal static class WorkOrdersApi
{
    public static void Map(IEndpointRouteBuilder api)
    {
        api.MapGet("/plan/packages", PackagesAsync).WithTags("Work orders")
            .WithSummary("The work packages of the coming shutdowns by the saved plan, each swap with its stable id")
            .AnswersList<StopPackageJson>();
        var orders = api.MapGroup("/work-orders").WithTags("Work orders");
        orders.MapGet("", ListAsync).WithSummary("What was reported of work orders, the newest first")
            .AnswersList<WorkOrderJson>();
        orders.MapPost("", ReportAsync).WithSummary("Reports on the work order of a planned swap; needs an Idempotency-Key")
            .WithDescription("A swap that is done is recorded as the replacement of its chain, and its parts leave the stock. "
                + "What contradicts what is known here is kept as waiting, with why, until a person settles it.")
            .RequireAuthorization(Allowed.MeasureAndDo).Accepts<WorkOrderEntryJson>("application/json")
            .Produces<TakenJson>(201).Produces<TakenJson>().ProducesProblem(400).ProducesProblem(409)
            .ProducesValidationProblem(422);
        orders.MapPut("/{id:long}/settlement", SettleAsync)
            .WithSummary("Settles what contradicts: takes theirs, or keeps ours; needs an Idempotency-Key")
            .RequireAuthorization(Allowed.Plan).Accepts<SettlementJson>("application/json")
            .Produces(204).ProducesProblem(400).ProducesValidationProblem(422);
    }

    private static async Task<IResult> PackagesAsync(
        HttpContext http, KeptPlan kept, [AsParameters] ListWish wish, CancellationToken ct) => ListPaging.Of(
        http, wish, (await kept.AskAsync(ct)).Packages(), p => ListKey.Of(ListKey.Rising(p.Start), p.Shutdown), p => p);

    private static async Task<IResult> ListAsync(
        HttpContext http, WorkOrderQuery reports, [AsParameters] ListWish wish, string? standing, string? chain,
        CancellationToken ct)
    {
        if (standing is not null && Tokens.Read<WorkOrderStanding>(standing) is null)
            return Problems.Refused("standing", $"One of {Tokens.All<WorkOrderStanding>()}.");
        var lines = await reports.AskAsync(Tokens.Read<WorkOrderStanding>(standing), chain, ct, int.MaxValue);
        return ListPaging.Of(http, wish, lines, l => ListKey.Of(ListKey.Falling(l.Report.Id)), WorkOrderJson.Of);
    }

    private static async Task<IResult> ReportAsync(
        HttpRequest request, WorkOrderDesk desk, IDbContextFactory<WearDb> databases, CancellationToken ct)
    {
        var told = await KeyedRequest<WorkOrderEntryJson>.ReadAsync(request, ApiJson.Default.WorkOrderEntryJson, ct);
        if (told.Body is not { } body) return told.Problem!;
        var who = request.HttpContext.User;
        if (Maker.Fault(who, body.By) is { } others) return others;
        if (body.Read() is not { } report) return Problems.Refused("order_state", $"One of {Tokens.All<WorkOrderState>()}.");
        await using var db = await databases.CreateDbContextAsync(ct);
        var before = await db.WorkOrderReports.AnyAsync(r => r.KeyOwner == KeyOwner.Sender && r.Key == told.Key, ct);
        return ReadingsApi.Answer(
            await desk.TakeAsync(new NewWorkOrderReport(report, told.Key, Maker.Name(who, body.By)), ct), before);
    }

    private static async Task<IResult> SettleAsync(HttpRequest request, WorkOrderDesk desk, long id, CancellationToken ct)
    {
        var told = await KeyedRequest<SettlementJson>.ReadAsync(request, ApiJson.Default.SettlementJson, ct);
        if (told.Body is not { } body) return told.Problem!;
        var who = request.HttpContext.User;
        if (Maker.Fault(who, body.By) is { } others) return others;
        if (body.Take is not ("theirs" or "ours")) return Problems.Refused("take", $"theirs or ours.");
        return await desk.SettleAsync(id, body.Take == "theirs", Maker.Name(who, body.By), ct) is { } why
            ? Problems.Refused("take", why)
            : Results.NoContent();
    }
}
