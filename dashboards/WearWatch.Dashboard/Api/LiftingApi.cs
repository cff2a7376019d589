using WearWatch.Chains.Families;
using WearWatch.Dashboard.Api.Lists;
using WearWatch.Dashboard.Api.Wire;
using WearWatch.Dashboard.Kit.Answers;
using WearWatch.Dashboard.Kit.Lifting;
using WearWatch.Dashboard.Kit.People;
using WearWatch.Dashboard.Lifting;
using WearWatch.Lifting.Examinations;
using WearWatch.Plant.Lifting;
using WearWatch.Plant.Settings;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Api;

/// <summary>The register of chains that lift.</summary>
internal static class LiftingApi
{
    public static void Map(IEndpointRouteBuilder api)
    {
        var lifting = api.MapGroup("/lifting").WithTags("Lifting");
        lifting.MapGet("", ListAsync).WithSummary("All chains that lift, worst first, then by the day of the examination")
            .AnswersList<LiftingJson>();
        lifting.MapGet("/{lifting}", OneAsync).WithSummary("A chain that lifts: state, entry, reports, quarantines and releases")
            .Produces<LiftingChainJson>().ProducesProblem(404);
        Write(lifting.MapPut("/{lifting}/entry", EntryAsync).Accepts<LiftingCardJson>("application/json"), Allowed.KeepRegister,
            "Writes an entry of the register; earlier ones stay");
        Write(lifting.MapPost("/{lifting}/examinations", ExamineAsync).Accepts<ExaminationJson>("application/json"),
            Allowed.KeepRegister, "Records the report of a thorough examination");
        Write(lifting.MapPost("/{lifting}/quarantine", QuarantineAsync).Accepts<LiftingStepJson>("application/json"),
            Allowed.MeasureAndDo, "Takes a chain out of use");
        Write(lifting.MapPost("/{lifting}/release", ReleaseAsync).Accepts<LiftingStepJson>("application/json"),
            Allowed.MeasureAndDo, "Releases a chain: only by the appointed competent person, under the own name");
        Write(lifting.MapPost("/{lifting}/disposal", DisposeAsync).Accepts<LiftingStepJson>("application/json"),
            Allowed.KeepRegister, "Records that a chain was discarded: final");
        Write(lifting.MapPost("/{lifting}/papers/{kind}", PaperAsync).Accepts<byte[]>(ScannedPaper.Pdf, ScannedPaper.Jpeg)
            .WithFileOf(ScannedPaper.MostBytes),
            Allowed.KeepRegister, "Keeps a scanned paper; its name in the query");
    }

    private static void Write(RouteHandlerBuilder route, string allowed, string summary) =>
        route.WithSummary(summary + "; needs an Idempotency-Key").RequireAuthorization(allowed).Produces<TakenJson>(201)
            .Produces<TakenJson>().ProducesProblem(400).ProducesValidationProblem(422);

    private static async Task<IResult> ListAsync(
        HttpContext http, LiftingDueQuery register, [AsParameters] ListWish wish, CancellationToken ct)
    {
        var view = await register.AskAsync(ct);
        return ListPaging.Of(
            http, wish, view.Lines, KeyOf, l => LiftingWire.ToJson(l.Chain, l.State, l.Now, l.Interval, view.Time.Today));
    }

    private static ListKey KeyOf(LiftingDueLine line) => ListKey.Of(
        ListKey.Falling((long)line.Now.Verdict), ListKey.Rising(line.State.ExaminationDue?.DayNumber ?? 0L), line.Chain.Name);

    private static async Task<IResult> OneAsync(LiftingQuery register, string lifting, CancellationToken ct)
    {
        if (await register.AskAsync(lifting, ct) is not { } view)
            return Problems.NotFound($"No chain that lifts is called '{lifting}'.");
        return Results.Ok(new LiftingChainJson(
            LiftingWire.ToJson(
                view.Chain, view.State, LiftingNow.Of(view.State, view.OutOfUseBy, view.Time), view.Interval, view.Time.Today),
            view.Card is { } card ? LiftingWire.ToJson(card) : null,
            [.. view.Examinations.Select(LiftingWire.ToJson)], [.. view.Steps.Select(LiftingWire.ToJson)],
            [.. view.Papers.Select(p => new LiftingPaperJson(p.Id, Tokens.Of(p.Kind), p.Name, p.ReceivedAt, p.ToldBy))]));
    }

    private static async Task<IResult> EntryAsync(HttpRequest request, LiftingCardDesk desk, string lifting, CancellationToken ct)
    {
        var told = await KeyedRequest<LiftingCardJson>.ReadAsync(request, ApiJson.Default.LiftingCardJson, ct);
        if (told.Body is not { } body) return told.Problem!;
        var who = request.HttpContext.User;
        if (Maker.Fault(who, body.By) is { } others) return others;
        var faults = new List<Refusal>();
        return LiftingWire.Card(body, told.Key, Maker.Name(who, body.By), faults) is { } card
            ? ReadingsApi.Answer(await desk.TakeAsync(new NewLiftingCard(lifting, body.Basis, card), ct))
            : Problems.Refused(faults);
    }

    private static async Task<IResult> ExamineAsync(
        HttpRequest request, ExaminationDesk desk, string lifting, CancellationToken ct)
    {
        var told = await KeyedRequest<ExaminationJson>.ReadAsync(request, ApiJson.Default.ExaminationJson, ct);
        if (told.Body is not { } body) return told.Problem!;
        var who = request.HttpContext.User;
        if (Maker.Fault(who, body.ToldBy) is { } others) return others;
        var faults = new List<Refusal>();
        return LiftingWire.Report(body, lifting, told.Key, Maker.Name(who, body.ToldBy), faults) is { } report
            ? ReadingsApi.Answer(await desk.TakeAsync(report, ct))
            : Problems.Refused(faults);
    }

    private static Task<IResult> QuarantineAsync(
        HttpRequest request, LiftingUseDesk desk, string lifting, CancellationToken ct) =>
        StepAsync(request, desk, lifting, LiftingStepKind.Quarantined, ct);

    private static Task<IResult> ReleaseAsync(HttpRequest request, LiftingUseDesk desk, string lifting, CancellationToken ct) =>
        StepAsync(request, desk, lifting, LiftingStepKind.Released, ct);

    private static Task<IResult> DisposeAsync(HttpRequest request, LiftingUseDesk desk, string lifting, CancellationToken ct) =>
        StepAsync(request, desk, lifting, LiftingStepKind.Disposed, ct);

    private static async Task<IResult> StepAsync(
        HttpRequest request, LiftingUseDesk desk, string lifting, LiftingStepKind kind, CancellationToken ct)
    {
        var told = await KeyedRequest<LiftingStepJson>.ReadAsync(request, ApiJson.Default.LiftingStepJson, ct);
        if (told.Body is not { } body) return told.Problem!;
        var who = request.HttpContext.User;
        if (Maker.Fault(who, body.By) is { } others) return others;
        var faults = new List<Refusal>();
        InspectionPoint[] closes =
            [.. (body.Closes ?? []).Select(c => LiftingWire.Word<InspectionPoint>("closes", c, faults))];
        return faults.Count > 0
            ? Problems.Refused(faults)
            : ReadingsApi.Answer(await desk.TakeAsync(
                new NewLiftingStep(told.Key, lifting, kind, Maker.Name(who, body.By), body.Reason ?? "", closes), ct));
    }

    private static async Task<IResult> PaperAsync(
        HttpRequest request, LiftingCardDesk desk, string lifting, string kind, string? name, string? by, CancellationToken ct)
    {
        var who = request.HttpContext.User;
        if (Maker.Fault(who, by) is { } others) return others;
        if (KeyedRequest<LiftingStepJson>.KeyOf(request) is not { } key) return KeyedRequest<LiftingStepJson>.NoKey();
        var faults = new List<Refusal>();
        var what = LiftingWire.Word<LiftingFileKind>("kind", kind, faults);
        if (faults.Count > 0) return Problems.Refused(faults);
        if (request.ContentLength is not <= ScannedPaper.MostBytes)
            return Problems.Refused("file", $"State its length, at most {ScannedPaper.MostBytes} bytes.");
        using var file = new MemoryStream();
        await request.Body.CopyToAsync(file, ct);
        return ReadingsApi.Answer(await desk.TakeAsync(
            new NewLiftingFile(key, lifting, what, name ?? "", file.ToArray(), Maker.Name(who, by)), ct));
    }
}
