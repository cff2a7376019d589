using System.Text.Json;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Dashboard.Kit.Exports;
using WearWatch.Lifting.Examinations;
using WearWatch.Storage;

namespace WearWatch.Dashboard.Lifting;

/// <summary>What leaves the register of lifting chains: sheets to print, lists as CSV, scanned papers.</summary>
internal static class LiftingFiles
{
    private static readonly string[] RegisterHeader =
    [
        "chain", "line", "position", "verdict", "faults", "working_load_kg", "working_load_of", "certificate_number",
        "certificate_on", "proof_test_on", "proof_load_kg", "proof_test_number", "maker", "standard", "grade", "trace_mark",
        "chain_set", "region", "interval_months", "interval_source", "last_look", "last_measured", "last_examined",
        "examination_due",
    ];

    private static readonly string[] ExaminationHeader =
    [
        "chain", "examined_on", "examiner", "occasion", "result", "points_examined", "points_found", "remarks", "remedy_by",
        "next_on", "report_number", "told_by", "received_at",
    ];

    public static void MapLiftingFiles(this IEndpointRouteBuilder app)
    {
        app.MapGet("/chains/{lifting}/lifting/sheet", SheetAsync).ExcludeFromDescription();
        app.MapGet("/lifting/register.csv", RegisterAsync).ExcludeFromDescription();
        app.MapGet("/lifting/examinations.csv", ExaminationsAsync).ExcludeFromDescription();
        app.MapGet("/lifting/papers/{paper:long}", PaperAsync).ExcludeFromDescription();
    }

    private static async Task<Results<RazorComponentResult, NotFound>> SheetAsync(
        LiftingQuery register, string lifting, CancellationToken ct) =>
        await register.AskAsync(lifting, ct) is { } view
            ? new RazorComponentResult<ExaminationPaper>(new { View = view })
            : TypedResults.NotFound();

    private static async Task<IResult> RegisterAsync(LiftingDueQuery register, CancellationToken ct)
    {
        var view = await register.AskAsync(ct);
        return CsvExport.File("lifting-register.csv", RegisterHeader, view.Lines.Select(l => new object?[]
        {
            l.Chain.Name, l.Chain.Line, l.Chain.Position, LiftingVerdicts.Words(l.Now.Verdict), string.Join(" ", l.Now.Words),
            l.Card?.WorkingLoadKg, l.Card?.WorkingLoadOf, l.Card?.CertificateNumber, Day(l.Card?.CertificateOn),
            Day(l.Card?.ProofTestOn), l.Card?.ProofLoadKg, l.Card?.ProofTestNumber, l.Card?.Maker, l.Card?.Standard,
            l.Card?.Grade, l.Card?.TraceMark, l.Card?.ChainSet,
            Word(l.Card?.Region is { } own and not LawRegion.NotSet ? own : view.Region), l.Interval.Months,
            l.Interval.Rule.Source, l.State.LookedAt, l.State.MeasuredAt, Day(l.State.ExaminedOn), Day(l.State.ExaminationDue),
        }));
    }

    private static async Task<IResult> ExaminationsAsync(IDbContextFactory<WearDb> databases, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        var names = await db.Chains.ToDictionaryAsync(c => c.Id, c => c.Name, ct);
        var rows = await db.Examinations.AsNoTracking().OrderBy(e => e.Id).ToListAsync(ct);
        return CsvExport.File("examinations.csv", ExaminationHeader, StandingRows.Standing(rows).Select(e => new object?[]
        {
            names[e.ChainId], Day(e.On), e.Examiner, Word(e.Occasion), Word(e.Result), e.Points.Count,
            string.Join(" ", e.Points.Where(p => p.Outcome == PointOutcome.Found).Select(p => Word(p.Point))), e.Remarks,
            Day(e.RemedyBy), Day(e.NextOn), e.ReportNumber, e.ToldBy, e.ReceivedAt,
        }));
    }

    /// <summary>A scan goes out as what it is and nothing else, whatever bytes may have been sent in.</summary>
    private static async Task<IResult> PaperAsync(
        IDbContextFactory<WearDb> databases, HttpResponse response, long paper, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        if (await db.LiftingFiles.AsNoTracking().SingleOrDefaultAsync(f => f.Id == paper, ct) is not { } file)
            return Results.NotFound();
        response.Headers.ContentSecurityPolicy = "default-src 'none'; sandbox";
        response.Headers.XContentTypeOptions = "nosniff";
        response.Headers.CacheControl = "private, no-cache";
        return Results.File(file.Content, file.ContentType, file.Name);
    }

    /// <summary>An enumeration in a file: lower case with underscores.</summary>
    private static string Word<T>(T value)
        where T : struct, Enum => JsonNamingPolicy.SnakeCaseLower.ConvertName(value.ToString());

    private static string? Day(DateOnly? day) => day is { } known ? FormValues.Text(known) : null;
}
