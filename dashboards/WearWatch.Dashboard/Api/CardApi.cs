using Microsoft.EntityFrameworkCore;
using WearWatch.Dashboard.Api.Lists;
using WearWatch.Dashboard.Api.Wire;
using WearWatch.Dashboard.Kit.Answers;
using WearWatch.Dashboard.Kit.People;
using WearWatch.Plant.Files;
using WearWatch.Plant.Register;
using WearWatch.Plant.Settings;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Api;

internal static class CardApi
{
    public static void Map(IEndpointRouteBuilder api)
    {
        var card = api.MapGroup("/chains/{chain}/master-data").WithTags("Register");
        card.MapGet("", OneAsync).WithSummary("A chain's master data with its revision")
            .Produces<CardJson>().ProducesProblem(404);
        card.MapPut("", PutAsync)
            .WithSummary("Changes master data, or adds a chain when no revision is sent; needs an Idempotency-Key")
            .RequireAuthorization(Allowed.KeepRegister)
            .Accepts<CardJson>("application/json").Produces<CardJson>().Produces<CardJson>(201)
            .ProducesProblem(400).ProducesProblem(409).ProducesValidationProblem(422);
        card.MapGet("/changes", ChangesAsync).WithSummary("Who changed what in the master data, when and why, newest first")
            .AnswersList<CardChangeJson>().ProducesProblem(404);
    }

    private static async Task<IResult> OneAsync(IDbContextFactory<WearDb> databases, string chain, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        return await db.FindAsync(chain, ct) is { } row ? Results.Ok(CardJson.Of(row)) : ChainsApi.Unknown(chain);
    }

    private static async Task<IResult> ChangesAsync(
        HttpContext http, IDbContextFactory<WearDb> databases, string chain, [AsParameters] ListWish wish, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        if (await db.FindAsync(chain, ct) is not { } row) return ChainsApi.Unknown(chain);
        var changes = await db.CardChanges.AsNoTracking().Where(c => c.ChainId == row.Id).OrderByDescending(c => c.Id)
            .ToListAsync(ct);
        return ListPaging.Of(http, wish, changes, c => ListKey.Of(ListKey.Falling(c.Id)), ToJson);
    }

    private static async Task<IResult> PutAsync(
        HttpRequest request, RegisterDesk desk, PlantClock clock, IDbContextFactory<WearDb> databases, string chain,
        CancellationToken ct)
    {
        var told = await KeyedRequest<CardJson>.ReadAsync(request, WireShapes.Of<CardJson>(), ct);
        if (told.Body is not { } body) return told.Problem!;
        var who = request.HttpContext.User;
        if (Maker.Fault(who, body.By) is { } others) return others;
        body.Texts[ChainColumns.Name.Name] = chain;
        var (card, faults) = CardText.Read(body.Texts, (await clock.NowAsync(ct)).Zone);
        if (faults.Count > 0) return Problems.Refused(faults);
        var by = Maker.Name(who, body.By);
        var answer = body.Revision is { } revision
            ? await desk.ChangeAsync(card!, revision, by, body.Why ?? "", who.IsPlanner(), ct)
            : await desk.AddAsync(card!, by, body.Why ?? "", who.IsPlanner(), ct);
        if (answer is RegisterAnswer.Refused refused) return Problems.Refused(refused.Refusals);
        if (answer is RegisterAnswer.Overtaken overtaken) return Overtaken(overtaken);
        await using var db = await databases.CreateDbContextAsync(ct);
        var kept = CardJson.Of((await db.FindAsync(chain, ct))!);
        return body.Revision is null && answer is RegisterAnswer.Kept { Changes.Count: > 0 }
            ? Results.Created((string?)null, kept)
            : Results.Ok(kept);
    }

    private static IResult Overtaken(RegisterAnswer.Overtaken answer) => Problems.Of(
        "overtaken", $"The master data were changed in the meantime",
        $"It is at revision {answer.Now.Revision} now: read it again, and send your change with that.");

    private static CardChangeJson ToJson(CardChangeRow change) => new()
    {
        Id = change.Id,
        At = change.At,
        By = change.By,
        Field = change.Field,
        From = change.From,
        To = change.To,
        Why = change.Why,
    };
}
