using Microsoft.EntityFrameworkCore;
using WearWatch.Dashboard.Api.Wire;
using WearWatch.Dashboard.Kit.Answers;
using WearWatch.Dashboard.Kit.People;
using WearWatch.Entries;
using WearWatch.Plant.Intake;
using WearWatch.Storage;

namespace WearWatch.Dashboard.Api;

/// <summary>What is said of a reading: the question before it is told, a person's yes, a correction, a withdrawal.</summary>
internal static class ReadingWordsApi
{
    public static void Map(IEndpointRouteBuilder api)
    {
        var readings = api.MapGroup("/readings").WithTags("Readings");
        readings.MapPost("/question", AskAsync)
            .WithSummary("Whether a reading fits, and what may have slipped if not; stores nothing")
            .Accepts<ReadingEntryJson>("application/json").Produces<DoubtJson>().ProducesProblem(404)
            .ProducesValidationProblem(422);
        readings.MapPut("/{id:long}/confirmation", ConfirmAsync)
            .WithSummary("Confirms a reading that is to be confirmed; needs an Idempotency-Key")
            .RequireAuthorization(Allowed.MeasureAndDo).Accepts<WordJson>("application/json").Produces<TakenJson>()
            .ProducesProblem(400).ProducesValidationProblem(422);
        readings.MapPut("/{id:long}/withdrawal", WithdrawAsync)
            .WithSummary("Takes a reading out of use, for ever kept; needs an Idempotency-Key")
            .RequireAuthorization(Allowed.MeasureAndDo).Accepts<WordJson>("application/json").Produces<TakenJson>()
            .ProducesProblem(400).ProducesValidationProblem(422);
        readings.MapPost("/{id:long}/corrections", CorrectAsync)
            .WithSummary("Replaces a reading by another; needs an Idempotency-Key")
            .RequireAuthorization(Allowed.MeasureAndDo).Accepts<ReadingEntryJson>("application/json")
            .Produces<TakenJson>(201).Produces<TakenJson>().ProducesProblem(400).ProducesProblem(409)
            .ProducesValidationProblem(422);
    }

    private static async Task<IResult> AskAsync(
        ReadingEntryJson body, HttpContext http, EntryQuestion question, IDbContextFactory<WearDb> databases, long? corrects,
        CancellationToken ct)
    {
        body = body with { Chain = await databases.NameAsync(body.ChainId, body.Chain, ct) };
        if (ReadingsApi.Faults(body) is { Count: > 0 } faults) return Problems.Refused(faults);
        await using var db = await databases.CreateDbContextAsync(ct);
        if (await db.FindAsync(body.Chain!, ct) is not { } chain) return ChainsApi.Unknown(body.Chain!);
        var doubt = await question.AskAsync(chain.Id, ReadingsApi.ToReading(body, "question", http.User), corrects, ct);
        return Results.Ok(ToJson(doubt));
    }

    private static async Task<IResult> ConfirmAsync(HttpRequest request, IntakeDesk desk, long id, CancellationToken ct)
    {
        var told = await KeyedRequest<WordJson>.ReadAsync(request, ApiJson.Default.WordJson, ct);
        if (told.Body is not { } body) return told.Problem!;
        var who = request.HttpContext.User;
        return Maker.Fault(who, body.By)
            ?? ReadingsApi.Answer(await desk.ConfirmAsync(id, Maker.Name(who, body.By), who.IsPlanner(), ct));
    }

    private static async Task<IResult> WithdrawAsync(HttpRequest request, IntakeDesk desk, long id, CancellationToken ct)
    {
        var told = await KeyedRequest<WordJson>.ReadAsync(request, ApiJson.Default.WordJson, ct);
        if (told.Body is not { } body) return told.Problem!;
        var who = request.HttpContext.User;
        return Maker.Fault(who, body.By)
            ?? ReadingsApi.Answer(await desk.WithdrawAsync(id, Maker.Name(who, body.By), body.Why ?? "", ct));
    }

    private static async Task<IResult> CorrectAsync(
        HttpRequest request, IntakeDesk desk, IDbContextFactory<WearDb> databases, long id, CancellationToken ct)
    {
        var told = await KeyedRequest<ReadingEntryJson>.ReadAsync(request, WireShapes.Of<ReadingEntryJson>(), ct);
        if (told.Body is not { } body) return told.Problem!;
        var who = request.HttpContext.User;
        if (Maker.Fault(who, body.ToldBy, body.MakerId) is { } others) return others;
        body = body with { Chain = await databases.NameAsync(body.ChainId, body.Chain, ct) };
        if (ReadingsApi.Faults(body) is { Count: > 0 } faults) return Problems.Refused(faults);
        return ReadingsApi.Answer(
            await desk.CorrectAsync(id, ReadingsApi.ToReading(body, told.Key, who), ct));
    }

    private static DoubtJson ToJson(EntryDoubt? doubt) => doubt is null
        ? new DoubtJson(false, null, null, "", [])
        : new DoubtJson(doubt.IsDoubted, doubt.ElongationPercent, doubt.Expected.MeanPercent, T[doubt.Question],
            [.. doubt.Slips.Select(s => new SlipJson
            {
                Kind = Tokens.Of(s.Kind),
                Probability = s.Probability,
                ElongationPct = s.ElongationPercent,
                Words = T[s.Words],
                Pitches = s.Pitches,
                LengthMm = s.LengthMm,
                Chain = s.Chain,
                CounterH = s.CounterH,
                TakenAt = s.TakenAt,
                IsChosen = s == doubt.Chosen,
                Answer = s.Kind.IsWithoutRecord() ? "record" : s.Kind.MeansReadAgain() ? "read_again" : "take",
            })])
        {
            Column = doubt.Column,
            HowFar = T[doubt.HowFar],
            ExpectedCounterH = doubt.ExpectedCounter?.AboutH,
            MostCounterH = doubt.ExpectedCounter?.MostH,
        };
}
