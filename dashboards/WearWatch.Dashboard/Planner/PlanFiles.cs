using System.Text;
using SpreadCheetah;
using SpreadCheetah.Worksheets;
using WearWatch.Chains;
using WearWatch.Dashboard.Kit.Lifting;
using WearWatch.Planning.Plans;
using WearWatch.Plant.Planning;

namespace WearWatch.Dashboard.Planner;

/// <summary>What leaves the house: lists as CSV and sheets, a calendar for each line, job cards as PDF.</summary>
public static class PlanFiles
{
    public static void MapPlanFiles(this IEndpointRouteBuilder app)
    {
        app.MapGet("/plan/swaps.csv",
            async (KeptPlan kept, LiftingStatesQuery states, CancellationToken ct) =>
                Csv(PlanTable.Swaps(await kept.AskAsync(ct), await states.AskAsync(ct))));
        app.MapGet("/plan/orders.csv",
            async (KeptPlan kept, CancellationToken ct) => Csv(PlanTable.Orders(await kept.AskAsync(ct))));
        app.MapGet("/plan/order-book.csv",
            async (OrderDesk orders, CancellationToken ct) => Csv(OrderTable.Of(await orders.AskAsync(ct))));
        app.MapGet("/plan/swaps.xlsx", async (KeptPlan kept, LiftingStatesQuery states, HttpResponse to, CancellationToken ct) =>
            await SheetAsync(PlanTable.Swaps(await kept.AskAsync(ct), await states.AskAsync(ct)), to, ct));
        app.MapGet("/plan/orders.xlsx", async (KeptPlan kept, HttpResponse to, CancellationToken ct) =>
            await SheetAsync(PlanTable.Orders(await kept.AskAsync(ct)), to, ct));
        app.MapPackageFiles();
        app.MapGet("/plan/calendar/{line}.ics",
            async (string line, KeptPlan kept, LiftingStatesQuery states, CancellationToken ct) =>
                Calendar(line, await kept.AskAsync(ct), await states.AskAsync(ct)));
        app.MapGet("/plan/card/{chain}/job-card.pdf", async (
            string chain, JobCardQuery cards, LiftingStatesQuery states, CancellationToken ct) =>
            await cards.AskAsync(chain, ct) is { } card
                ? Results.File(JobCardPdf.Write(card, (await states.AskAsync(ct))[card.Chain]), "application/pdf")
                : Results.NotFound());
    }

    /// <summary>RFC 4180: commas, quotes where needed, CRLF.</summary>
    public static string CsvText(PlanTable table) => string.Concat(
        table.Rows.Prepend([.. table.Head])
            .Select(row => string.Join(',', row.Select(cell => Quoted(PlanTable.Text(cell), cell is string))) + "\r\n"));

    /// <summary>A text that begins like a formula gets a ' before it, so that no spreadsheet runs a chain's name.</summary>
    private static string Quoted(string text, bool isText)
    {
        if (isText && text.Length > 0 && "=+-@".Contains(text[0])) text = "'" + text;
        return text.AsSpan().IndexOfAny(",\"\r\n") < 0 ? text : $"\"{text.Replace("\"", "\"\"")}\"";
    }

    /// <summary>Writes a book with a sheet for each table, its head row fixed.</summary>
    public static async Task SheetsAsync(IReadOnlyList<PlanTable> tables, Stream to, CancellationToken ct)
    {
        await using var sheet = await Spreadsheet.CreateNewAsync(to, null, ct);
        foreach (var table in tables)
        {
            await sheet.StartWorksheetAsync(table.Name, new WorksheetOptions { FrozenRows = 1 }, ct);
            await sheet.AddRowAsync([.. table.Head.Select(h => new Cell(h))], ct);
            foreach (var row in table.Rows) await sheet.AddRowAsync([.. row.Select(CellOf)], ct);
        }

        await sheet.FinishAsync(ct);
    }

    private static Cell CellOf(object? cell) => cell switch
    {
        int whole => new Cell(whole),
        double number => new Cell(number),
        _ => new Cell(PlanTable.Text(cell)),
    };

    internal static IResult Csv(PlanTable table) =>
        Results.File(Encoding.UTF8.GetBytes(CsvText(table)), "text/csv; charset=utf-8", table.Name + ".csv");

    private static Task SheetAsync(PlanTable table, HttpResponse response, CancellationToken ct) =>
        SendAsync(table.Name, [table], response, ct);

    internal static async Task SendAsync(
        string name, IReadOnlyList<PlanTable> tables, HttpResponse response, CancellationToken ct)
    {
        response.ContentType = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
        response.Headers.ContentDisposition = $"attachment; filename={name}.xlsx";
        // the writer's stream: the sheet is written in small synchronous pieces
        await SheetsAsync(tables, response.BodyWriter.AsStream(), ct);
    }

    private static IResult Calendar(string line, KeptPlanView view, LiftingStatesView lifting)
    {
        if (!view.Lines.Contains(line)) return Results.NotFound();
        var swaps = view.Plan.Placements.Where(p => view.Picture.Faces[p.Chain].Row.Line == line);
        var text = SwapFeed.Write(
            line, swaps, NoteOf, view.Picture.Swaps.Values.Select(s => s.DecidedAt).DefaultIfEmpty(view.Picture.Input.Now).Max(),
            phrase => T[phrase]);
        return Results.File(Encoding.UTF8.GetBytes(text), "text/calendar; charset=utf-8");

        string NoteOf(string chain) => view.Picture.Faces[chain].Row is var row
            ? string.Join(", ", new[]
            {
                row.Position,
                row.ChainType,
                row.Pitches is { } n ? T[$"{n:#,0} pitches"] : "",
                view.Picture.Swaps.GetValueOrDefault(chain)?.Note ?? "",
                lifting[chain] is { } now ? $"{T[now.Brief]}. {T[Caution.LiftingInBrief]}" : "",
            }.Where(t => t.Length > 0))
            : "";
    }
}
