using Microsoft.EntityFrameworkCore;
using WearWatch.Dashboard.Administration.Importing;
using WearWatch.Dashboard.Api.Lists;
using WearWatch.Dashboard.Api.Wire;
using WearWatch.Dashboard.Kit.Answers;
using WearWatch.Dashboard.Kit.Pages;
using WearWatch.Dashboard.Kit.People;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;
using WearWatch.Storage;

namespace WearWatch.Dashboard.Api;

internal static class ImportsApi
{
    public static void Map(IEndpointRouteBuilder api)
    {
        var imports = api.MapGroup("/imports").WithTags("Imports");
        imports.MapGet("", PastAsync).WithSummary("The files taken in last, newest first")
            .AnswersList<PastImportJson>();
        // A foreign page cannot send the Idempotency-Key without asking first, hence no token of our own forms is needed.
        imports.MapPost("", TakeInAsync).WithSummary(
            "Takes in CSV files as multipart form data; ?preview=true stores nothing; needs an Idempotency-Key")
            .RequireAuthorization(Allowed.KeepRegister)
            .Accepts<IFormFileCollection>("multipart/form-data").Produces<ImportJson>().ProducesProblem(400).DisableAntiforgery()
            .WithFileOf(ChosenFiles.MostBytes);
    }

    private static async Task<IResult> PastAsync(
        HttpContext http, IDbContextFactory<WearDb> databases, [AsParameters] ListWish wish, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        var past = await db.Imports.AsNoTracking().OrderByDescending(i => i.Id).Select(i => new
        {
            i.Id,
            Json = new PastImportJson(i.FileName, i.ReceivedAt, i.Taken, i.AlreadyKnown, i.Waiting, i.Refused) { By = i.ToldBy },
        }).ToListAsync(ct);
        return ListPaging.Of(http, wish, past, i => ListKey.Of(ListKey.Falling(i.Id)), i => i.Json);
    }

    private static async Task<IResult> TakeInAsync(HttpRequest request, FileImport import, bool? preview, CancellationToken ct)
    {
        if (KeyedRequest<ImportJson>.KeyOf(request) is null) return KeyedRequest<ImportJson>.NoKey();
        if (await SentForm.ReadAsync(request, ct) is not { } form)
            return Problems.BadRequest($"Send the files as multipart/form-data.");
        if (form.Files.Count is 0 or > ChosenFiles.MostFiles)
            return Problems.BadRequest($"Send 1 to {ChosenFiles.MostFiles} files.");
        var by = Maker.Name(request.HttpContext.User, told: null);
        List<ImportFile> files =
            [.. form.Files.Select(f => new ImportFile(Path.GetFileName(f.FileName), f.OpenReadStream) { By = by })];
        var report = preview == true ? await import.PreviewAsync(files, null, ct) : await import.ImportAsync(files, null, ct);
        return Results.Ok(ToJson(report));
    }

    private static ImportJson ToJson(ImportReport report) => new(
        report.Taken, report.AlreadyKnown, report.Waiting, report.Refused,
        [.. report.Files.Select(f => new ImportedFileJson
        {
            File = f.Name,
            Kind = Tokens.Of(f.Kind),
            Taken = f.Taken,
            AlreadyKnown = f.AlreadyKnown,
            Waiting = f.Waiting,
            Refused = f.Refused,
            RemarkCount = f.RemarkCount,
            Remarks = [.. f.Remarks.Select(r => new RemarkJson(r.Line, r.Column, Tokens.Of(r.Kind), T[r.Reason]))],
        })]);
}
