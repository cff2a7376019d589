using WearWatch.Dashboard.Api.Lists;
using WearWatch.Dashboard.Api.Wire;
using WearWatch.Dashboard.Kit.Answers;
using WearWatch.Dashboard.Kit.People;
using WearWatch.Dashboard.Overview.Notices;
using WearWatch.Plant.Notices;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Api;

internal static class NoticesApi
{
    public static void Map(IEndpointRouteBuilder api)
    {
        var notices = api.MapGroup("/notices").WithTags("Notices");
        notices.MapGet("", ListAsync).WithSummary("Open notices, or ended ones; urgent ones first").AnswersList<NoticeJson>();
        notices.MapPut("/{id:long}/judgement", JudgeAsync).WithSummary("Keeps a person's judgement; needs an Idempotency-Key")
            .RequireAuthorization(Allowed.MeasureAndDo)
            .Accepts<JudgementJson>("application/json").Produces(204).ProducesProblem(400).ProducesProblem(404);
        notices.MapPost("/{id:long}/steps", StepAsync)
            .WithSummary("Acknowledges, assigns, puts off, comments, or lets ask again; needs an Idempotency-Key")
            .RequireAuthorization(Allowed.MeasureAndDo).Accepts<NoticeStepEntryJson>("application/json")
            .Produces<TakenJson>().Produces<TakenJson>(201).ProducesProblem(400).ProducesProblem(404).ProducesProblem(409)
            .ProducesValidationProblem(422);
    }

    private static async Task<IResult> ListAsync(
        HttpContext http, NoticesQuery board, [AsParameters] ListWish wish, string? kind, string? line, bool? urgent,
        bool? ended, string? standing, string? assigned, CancellationToken ct)
    {
        if (kind is not null && Tokens.Read<NoticeKind>(kind) is null)
            return Problems.Refused("kind", $"One of {Tokens.All<NoticeKind>()}.");
        if (standing is not null && Tokens.Read<NoticeStanding>(standing) is null)
            return Problems.Refused("standing", $"One of {Tokens.All<NoticeStanding>()}.");
        var filter = new NoticeFilter
        {
            Kind = Tokens.Read<NoticeKind>(kind),
            Line = line,
            UrgentOnly = urgent ?? false,
            Ended = ended ?? false,
            Standing = Tokens.Read<NoticeStanding>(standing),
            AssignedTo = assigned,
        };
        return ListPaging.Of(http, wish, await board.AskAsync(filter, ct, int.MaxValue), KeyOf, ToJson);
    }

    /// <summary>As the list is sorted: <see cref="NoticeLine.InOrder"/>.</summary>
    private static ListKey KeyOf(NoticeLine n) => ListKey.Of(
        ListKey.NoFirst(n.Acknowledged || n.IsSnoozed), ListKey.NoFirst(!n.Urgent),
        ListKey.NoFirst(n.Kind == NoticeKind.LimitNear && n.PlannedSwap != null), ListKey.Falling(n.RaisedAt),
        ListKey.Rising(n.Id));

    private static NoticeJson ToJson(NoticeLine n) => new()
    {
        Id = n.Id,
        Chain = n.Chain,
        Line = n.Line,
        Kind = Tokens.Of(n.Kind),
        Urgent = n.Urgent,
        Why = T[n.Why],
        WhatToDo = T[n.WhatToDo],
        RaisedAt = n.RaisedAt,
        EndedAt = n.EndedAt,
        PlannedSwap = n.PlannedSwap,
        JudgedReal = n.JudgedReal,
        JudgedBy = n.JudgedBy,
        Standing = Tokens.Of(n.Attention.Standing),
        SnoozedUntil = n.SnoozedUntil,
        AssignedTo = n.AssignedTo,
        Steps = [.. n.Steps.Select(s => new NoticeStepJson
        {
            Step = Tokens.Of(s.Kind),
            At = s.At,
            By = s.By,
            Person = s.Person,
            Until = s.Until,
            Comment = s.Comment,
        })],
    };

    private static async Task<IResult> StepAsync(HttpRequest request, NoticeStepDesk desk, long id, CancellationToken ct)
    {
        var told = await KeyedRequest<NoticeStepEntryJson>.ReadAsync(request, ApiJson.Default.NoticeStepEntryJson, ct);
        if (told.Body is not { } body) return told.Problem!;
        var who = request.HttpContext.User;
        if (Maker.Fault(who, body.By) is { } others) return others;
        if (Tokens.Read<NoticeStepKind>(body.Step) is not { } kind)
            return Problems.Refused("step", $"One of {Tokens.All<NoticeStepKind>()}.");
        var answer = await desk.TakeAsync(id, new NewNoticeStep
        {
            Kind = kind,
            Key = told.Key,
            By = Maker.Name(who, body.By),
            Person = body.Person ?? "",
            Until = body.Until,
            Comment = body.Comment ?? "",
        }, ct);
        return answer is null ? Problems.NotFound($"There is no notice {id}.") : ReadingsApi.Answer(answer);
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
