using WearWatch.Dashboard.Kit.Answers;
using WearWatch.Dashboard.Kit.People;
using WearWatch.Plant.Planning;

namespace WearWatch.Dashboard.Api;

/// <summary>The swap plan for programs.</summary>
internal static class PlanApi
{
    public static void Map(IEndpointRouteBuilder api)
    {
        var plan = api.MapGroup("/plan").WithTags("Plan");
        plan.MapGet("", ShowAsync).WithSummary("The swap plan that is kept, with its cost, orders and shutdowns")
            .Produces<PlanJson>();
        plan.MapPut("", SaveAsync).WithSummary("Keeps a plan, all of it or nothing; needs an Idempotency-Key")
            .WithDescription("Takes what a proposal answers as it is, or the revision and some swaps; chains that are not named "
                + "stay as they are. 409 when somebody decided otherwise since that revision.")
            .RequireAuthorization(Allowed.Plan)
            .Accepts<PlanEntryJson>("application/json").Produces<PlanJson>()
            .ProducesProblem(400).ProducesProblem(409).ProducesValidationProblem(422);
        plan.MapPost("/proposals", ProposeAsync).WithSummary("Proposes the plan of least expected cost; nothing is kept")
            .WithDescription("Takes some seconds. The body {} plans under the real circumstances; what is proposed under others "
                + "cannot be kept.")
            .Accepts<WhatIfJson>("application/json").Produces<PlanJson>()
            .ProducesProblem(400).ProducesValidationProblem(422);
    }

    private static async Task<IResult> ShowAsync(PlanDesk desk, CancellationToken ct) =>
        Results.Ok(PlanJson.Of(await desk.ShowAsync(ct)));

    private static async Task<IResult> ProposeAsync(HttpRequest request, PlanDesk desk, CancellationToken ct)
    {
        var (body, problem) = await KeyedRequest<WhatIfJson>.BodyAsync(request, PlanningJson.Default.WhatIfJson, ct);
        return body is null ? problem! : Answer(await desk.ProposeAsync(body.ToWhatIf(), null, ct));
    }

    private static async Task<IResult> SaveAsync(HttpRequest request, PlanDesk desk, CancellationToken ct)
    {
        var told = await KeyedRequest<PlanEntryJson>.ReadAsync(request, PlanningJson.Default.PlanEntryJson, ct);
        if (told.Body is not { } body) return told.Problem!;
        var who = request.HttpContext.User;
        return Maker.Fault(who, body.By) ?? Answer(await desk.SaveAsync(body, Maker.Name(who, body.By), ct));
    }

    private static IResult Answer(PlanAnswer answer) => answer switch
    {
        PlanAnswer.Planned planned => Results.Ok(PlanJson.Of(planned.Draft)),
        PlanAnswer.Refused refused => Problems.Refused(refused.Refusals),
        PlanAnswer.Overtaken overtaken => Problems.Of(
            "overtaken", $"The plan was changed in the meantime",
            $"It is at revision {overtaken.Revision} now: read it again, and start from that. Nothing was kept."),
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
