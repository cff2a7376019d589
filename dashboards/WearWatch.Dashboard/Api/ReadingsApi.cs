using System.Globalization;
using System.Security.Claims;
using Microsoft.EntityFrameworkCore;
using WearWatch.Dashboard.Api.Lists;
using WearWatch.Dashboard.Api.Wire;
using WearWatch.Dashboard.Kit.Answers;
using WearWatch.Dashboard.Kit.People;
using WearWatch.Gauging;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Settings;
using WearWatch.Storage;
using WearWatch.Storage.Rows;
using WearWatch.Units;

namespace WearWatch.Dashboard.Api;

internal static class ReadingsApi
{
    public static void Map(IEndpointRouteBuilder api)
    {
        api.MapGet("/chains/{chain}/readings", ListAsync).WithTags("Readings")
            .WithSummary("A chain's readings that stand, oldest first").AnswersList<ReadingJson>()
            .ProducesProblem(404);
        api.MapPost("/readings", TellAsync).WithTags("Readings").WithSummary("Records a reading; needs an Idempotency-Key")
            .RequireAuthorization(Allowed.MeasureAndDo)
            .Accepts<ReadingEntryJson>("application/json")
            .Produces<TakenJson>(201).Produces<TakenJson>().ProducesProblem(400).ProducesProblem(409)
            .ProducesValidationProblem(422);
    }

    private static async Task<IResult> ListAsync(
        HttpContext http, IDbContextFactory<WearDb> databases, string chain, [AsParameters] ListWish wish, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        if (await db.FindAsync(chain, ct) is not { } row) return ChainsApi.Unknown(chain);
        var all = await db.Readings.AsNoTracking().Where(r => r.ChainId == row.Id).OrderBy(r => r.Id).ToListAsync(ct);
        var told = StandingRows.Standing(all).Concat(StandingRows.Waiting(all));
        return ListPaging.Of(http, wish, [.. told], KeyOf, r => ReadingJson.Of(r, chain));
    }

    private static ListKey KeyOf(ReadingRow row) => ListKey.Of(
        ListKey.NoFirst(row.Standing == ReadingStanding.Waiting), ListKey.Rising(row.TakenAt ?? row.ReceivedAt),
        ListKey.Rising(row.Id));

    private static async Task<IResult> TellAsync(
        HttpRequest request, IntakeDesk desk, PlantSettings plant, IDbContextFactory<WearDb> databases, CancellationToken ct)
    {
        var told = await KeyedRequest<ReadingEntryJson>.ReadAsync(request, WireShapes.Of<ReadingEntryJson>(), ct);
        if (told.Body is not { } body) return told.Problem!;
        var who = request.HttpContext.User;
        if (Maker.Fault(who, body.ToldBy, body.MakerId) is { } others) return others;
        body = body with { Chain = await databases.NameAsync(body.ChainId, body.Chain, ct) };
        var faults = Faults(body);
        if (await PlantCheck.FaultAsync(plant, body.Plant, ct) is { } elsewhere) faults.Add(elsewhere);
        if (faults.Count > 0) return Problems.Refused(faults);
        await using var db = await databases.CreateDbContextAsync(ct);
        var before = await db.Readings.AnyAsync(r => r.KeyOwner == KeyOwner.Sender && r.Key == told.Key, ct);
        return Answer(await desk.TakeReadingAsync(ToReading(body, told.Key, who), ct), before);
    }

    /// <summary>The answer to what was told.</summary>
    /// <param name="answer">What became of it.</param>
    /// <param name="waitedBefore">Whether a reading that waits had been told before.</param>
    public static IResult Answer(IntakeAnswer answer, bool waitedBefore = false) => answer switch
    {
        IntakeAnswer.Refused refused => Problems.Refused(refused.Refusals),
        IntakeAnswer.Taken taken => Answer(new TakenJson(taken.Id, "accepted", ""), taken.AlreadyKnown),
        IntakeAnswer.Waiting waiting => Answer(new TakenJson(waiting.Id, "waiting", T[waiting.Why]), waitedBefore),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>201 for what is new, 200 for what had been told before.</summary>
    private static IResult Answer(TakenJson taken, bool alreadyKnown) => Results.Json(
        taken, ApiJson.Default.TakenJson, statusCode: alreadyKnown ? StatusCodes.Status200OK : StatusCodes.Status201Created);

    /// <summary>What is wrong with the body; empty when it can be told.</summary>
    public static List<Refusal> Faults(ReadingEntryJson body)
    {
        body.Facts(out var wrong);
        var faults = wrong.Select(f => new Refusal(f.Column, f.Reason)).ToList();
        if (Tokens.Unit(body.Unit) is null) faults.Add(new("unit", $"mm or in."));
        if (body.Inside is null != body.Outside is null)
            faults.Add(new(body.Inside is null ? "inside" : "outside", $"Give both, inside and outside of the end rollers."));
        if (new[] { body.Length is not null, body.LengthMm is not null, body.Inside is not null }.Count(told => told) != 1)
            faults.Add(new("length", $"Give the length as text with its unit, or length_mm as a number, or inside and outside."));
        if (string.IsNullOrWhiteSpace(body.Chain)) faults.Add(new("chain", $"Say which chain."));
        return faults;
    }

    /// <summary>The reading of a body without faults.</summary>
    public static NewReading ToReading(ReadingEntryJson body, string key, ClaimsPrincipal who)
    {
        var by = Maker.Name(who, body.ToldBy);
        var unit = body.LengthMm is not null ? LengthUnit.Millimetre : Tokens.Unit(body.Unit)!.Value;
        return NewReading.Of(body.Facts(out _), LengthText(body), unit, key, by) with
        {
            Confirmed = body.Confirmed ?? false,
            ByPlanner = who.IsPlanner(),
        };
    }

    private static string LengthText(ReadingEntryJson body) =>
        body.Length ?? (body.Inside is { } inside
            ? MeasuredLengthText.OverRollers(inside, body.Outside!)
            : body.LengthMm!.Value.ToString("0.######", CultureInfo.InvariantCulture));
}
