using Microsoft.EntityFrameworkCore;
using Microsoft.Net.Http.Headers;
using WearWatch.Chains.Families;
using WearWatch.Dashboard.Api.Lists;
using WearWatch.Dashboard.Api.Wire;
using WearWatch.Dashboard.Kit.Answers;
using WearWatch.Dashboard.Kit.People;
using WearWatch.Inspections;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Settings;
using WearWatch.Storage;

namespace WearWatch.Dashboard.Api;

/// <summary>Looks at chains, and the photos of what they found.</summary>
internal static class InspectionsApi
{
    public static void Map(IEndpointRouteBuilder api)
    {
        var looks = api.MapGroup("").WithTags("Inspections");
        looks.MapPost("/inspections", TellAsync)
            .WithSummary("Records an inspection of a chain, point by point; needs an Idempotency-Key")
            .RequireAuthorization(Allowed.MeasureAndDo)
            .Accepts<InspectionEntryJson>("application/json").Produces<TakenJson>(201).Produces<TakenJson>()
            .ProducesProblem(400).ProducesProblem(409).ProducesValidationProblem(422);
        looks.MapPost("/inspections/{key}/photos/{point}", PhotoAsync)
            .WithSummary("Adds a JPEG photo to what an inspection found; needs an Idempotency-Key")
            .RequireAuthorization(Allowed.MeasureAndDo)
            .Accepts<byte[]>(Jpeg).Produces<TakenJson>(201).Produces<TakenJson>().ProducesProblem(400).ProducesProblem(409)
            .ProducesValidationProblem(422).WithFileOf(JpegPhoto.MostBytes);
        looks.MapGet("/chains/{chain}/inspections", ListAsync)
            .WithSummary("The inspections of a chain with their photos, newest first")
            .AnswersList<InspectionJson>().ProducesProblem(404);
        looks.MapGet("/photos/{id:long}", OneAsync).WithSummary("A photo").Produces(200, contentType: Jpeg).ProducesProblem(404);
    }

    private const string Jpeg = "image/jpeg";

    private static async Task<IResult> TellAsync(
        HttpRequest request, InspectionDesk desk, PlantSettings plant, IDbContextFactory<WearDb> databases, CancellationToken ct)
    {
        var told = await KeyedRequest<InspectionEntryJson>.ReadAsync(request, ApiJson.Default.InspectionEntryJson, ct);
        if (told.Body is not { } body) return told.Problem!;
        var who = request.HttpContext.User;
        if (Maker.Fault(who, body.ToldBy, body.MakerId) is { } others) return others;
        if (await PlantCheck.FaultAsync(plant, body.Plant, ct) is { } elsewhere) return Problems.Refused([elsewhere]);
        body = body with { Chain = await databases.NameAsync(body.ChainId, body.Chain, ct) };
        var findings = new List<Finding>();
        foreach (var finding in body.Findings ?? [])
        {
            if (finding is null || Tokens.Read<InspectionPoint>(finding.Point) is not { } point)
                return Problems.Refused("findings", $"A point is one of {Tokens.All<InspectionPoint>()}.");
            findings.Add(new Finding(point, finding.Found ?? false, finding.Note?.Trim() ?? ""));
        }

        return ReadingsApi.Answer(await desk.TakeAsync(
            new NewInspection(told.Key, body.Chain ?? "", body.TakenAt, body.CounterH, findings, Maker.Name(who, body.ToldBy)),
            ct));
    }

    private static async Task<IResult> PhotoAsync(
        HttpRequest request, InspectionDesk desk, string key, string point, string? by, CancellationToken ct)
    {
        var who = request.HttpContext.User;
        if (Maker.Fault(who, by) is { } others) return others;
        if (KeyedRequest<InspectionEntryJson>.KeyOf(request) is not { } photoKey)
            return KeyedRequest<InspectionEntryJson>.NoKey();
        if (Tokens.Read<InspectionPoint>(point) is not { } shown)
            return Problems.Refused("point", $"One of {Tokens.All<InspectionPoint>()}.");
        if (request.ContentType != Jpeg)
            return Problems.MediaType("image/jpeg");
        if (request.ContentLength is not <= JpegPhoto.MostBytes)
            return Problems.Refused("photo", $"State its length, at most {JpegPhoto.MostBytes} bytes.");
        using var file = new MemoryStream();
        await request.Body.CopyToAsync(file, ct);
        return ReadingsApi.Answer(
            await desk.TakeAsync(new NewPhoto(photoKey, key, shown, file.ToArray(), Maker.Name(who, by)), ct));
    }

    private static async Task<IResult> ListAsync(
        HttpContext http, IDbContextFactory<WearDb> databases, string chain, [AsParameters] ListWish wish, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        if (await db.FindAsync(chain, ct) is not { } row) return ChainsApi.Unknown(chain);
        var looks = await db.Looks.AsNoTracking().Where(l => l.ChainId == row.Id).OrderByDescending(l => l.TakenAt)
            .ThenByDescending(l => l.Id).ToListAsync(ct);
        var photos = (await db.Photos.Where(p => p.ChainId == row.Id).Select(p => new { p.LookKey, p.Point, p.Id })
            .ToListAsync(ct)).ToLookup(p => (p.LookKey, p.Point), p => p.Id);
        return ListPaging.Of(
            http, wish, looks, l => ListKey.Of(ListKey.Falling(l.TakenAt), ListKey.Falling(l.Id)),
            l => new InspectionJson(l.Id, chain, l.TakenAt, l.ToldBy, [.. l.Findings.Select(f =>
                new FindingJson(Tokens.Of(f.Point), f.Found, f.Note, [.. photos[(l.Key, f.Point)]]))]));
    }

    /// <summary>A photo goes out as what it is and nothing else, whatever bytes may have been sent in.</summary>
    private static async Task<IResult> OneAsync(
        IDbContextFactory<WearDb> databases, HttpResponse response, long id, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        if (await db.Photos.AsNoTracking().SingleOrDefaultAsync(p => p.Id == id, ct) is not { } photo)
            return Problems.NotFound($"There is no photo {id}.");
        response.Headers.ContentSecurityPolicy = "default-src 'none'; sandbox";
        // Shown again only to whoever may still see it: a browser asks each time, and is told that it has it already.
        response.Headers.CacheControl = "private, no-cache";
        return Results.Bytes(photo.Jpeg, Jpeg, entityTag: new EntityTagHeaderValue($"\"photo-{id}\""));
    }
}
