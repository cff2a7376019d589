using WearWatch.Dashboard.Api.Wire;
using WearWatch.Dashboard.Kit.People;
using WearWatch.Dashboard.Overview.Notices;
using WearWatch.Plant.Notices;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Api;

internal static class NoticesApi
{
    public static void Map(IEndpointRouteBuilder api)
    {
        var notices = api.MapGroup("/notices").WithTags("Notices");
        notices.MapGet("", ListAsync).WithSummary("Open notices, or ended ones; urgent ones first, at most 500")
            .Produces<IReadOnlyList<NoticeJson>>().ProducesValidationProblem(422);
        notices.MapPut("/{id:long}/judgement", JudgeAsync).WithSummary("Keeps a person's judgement; needs an Idempotency-Key")
            .RequireAuthorization(Allowed.MeasureAndDo)
            .Accepts<JudgementJson>("application/json").Produces(204).ProducesProblem(400).ProducesProblem(404);
    }

    private static async Task<IResult> ListAsync(
        NoticesQuery board, string? kind, string? line, bool? urgent, bool? ended, CancellationToken ct)
    {
        if (kind is not null && Tokens.Read<NoticeKind>(kind) is null)
            return Problems.Refused("kind", "One of " + Tokens.All<NoticeKind>() + ".");
        var filter = new NoticeFilter
        {
            Kind = Tokens.Read<NoticeKind>(kind),
            Line = line,
            UrgentOnly = urgent ?? false,
            Ended = ended ?? false,
        };
        return Results.Ok<IReadOnlyList<NoticeJson>>([.. (await board.AskAsync(filter, ct)).Select(n => new NoticeJson
        {
            Id = n.Id,
            Chain = n.Chain,
            Line = n.Line,
            Kind = Tokens.Of(n.Kind),
            Urgent = n.Urgent,
            Why = n.Why,
            WhatToDo = n.WhatToDo,
            RaisedAt = n.RaisedAt,
            EndedAt = n.EndedAt,
            PlannedSwap = n.PlannedSwap,
            JudgedReal = n.JudgedReal,
            JudgedBy = n.JudgedBy,
        })]);
    }

    private static async Task<IResult> JudgeAsync(HttpRequest request, NoticeDesk judging, long id, CancellationToken ct)
    {
        var told = await KeyedRequest<JudgementJson>.ReadAsync(request, ApiJson.Default.JudgementJson, ct);
        if (told.Body is not { } body) return told.Problem!;
        var who = request.HttpContext.User;
        if (Maker.Fault(who, body.By) is { } others) return others;
        return await judging.JudgeAsync(id, body.Real, Maker.Name(who, body.By), ct)
            ? Results.NoContent()
            : Problems.NotFound($"There is no notice {id}.");
    }
}
