using System.Text.Json;
using WearWatch.Dashboard.Kit.Lifting;
using WearWatch.Dashboard.Kit.Paper;
using WearWatch.Plant.Planning;

namespace WearWatch.Dashboard.Planner;

/// <summary>The work package of a stop as one PDF with its job cards, as one book of sheets, and for programs.</summary>
public static class PackageFiles
{
    public static void MapPackageFiles(this IEndpointRouteBuilder app)
    {
        app.MapGet("/plan/stop.pdf", async (
            string id, WorkPackageQuery packages, LiftingStatesQuery lifting, CancellationToken ct) =>
            await packages.AskAsync(id, ct) is { Package: not null } view
                ? Results.File(Pdf(view, await lifting.AskAsync(ct)), "application/pdf")
                : Results.NotFound());
        app.MapGet("/plan/stop.xlsx", async (string id, WorkPackageQuery packages, HttpResponse to, CancellationToken ct) =>
        {
            if (await packages.AskAsync(id, ct) is { Package: { } package } view)
                await PlanFiles.SendAsync("work-package", Tables(view, WorkPackageTable.Of(package)), to, ct);
            else to.StatusCode = StatusCodes.Status404NotFound;
        });
        app.MapGet("/plan/stop.json", async (string id, KeptPlan kept, CancellationToken ct) =>
            Find(await kept.AskAsync(ct), id) is { } stop
                ? Results.File(
                    JsonSerializer.SerializeToUtf8Bytes(stop, PlanningJson.Default.StopPackageJson), "application/json",
                    "work-package.json")
                : Results.NotFound());
        app.MapGet("/plan/stop.csv", async (string id, KeptPlan kept, CancellationToken ct) =>
            Find(await kept.AskAsync(ct), id) is { } stop ? PlanFiles.Csv(PackageTable.Of(stop)) : Results.NotFound());
    }

    private static StopPackageJson? Find(KeptPlanView plan, string windowId) =>
        plan.Packages().FirstOrDefault(p => p.Shutdown == windowId);

    private static List<PlanTable> Tables(WorkPackageView view, IReadOnlyList<WorkPackageTable> lists) =>
    [
        .. lists.Select(l => new PlanTable(l.Title, l.Head, [.. l.Rows.Select(r => (IReadOnlyList<object?>)[.. r])])),
        new(T["Cautions"], [T["Caution"]], [.. view.Cautions.Select(c => (IReadOnlyList<object?>)[c])]),
    ];

    private static byte[] Pdf(WorkPackageView view, LiftingStatesView lifting)
    {
        var package = view.Package!;
        string title = T[$"Work package: {package.Window.Line}"];
        return PaperSheet.Write(title, sheet =>
        {
            sheet.Title(title);
            sheet.Paragraph(T[PackageWords.Stop(package.Window, view.Time)]);
            sheet.Strong(T[PackageWords.Fits(package)]);
            foreach (var caution in view.Cautions) sheet.Strong(caution);
            foreach (var list in WorkPackageTable.Of(package))
            {
                sheet.Heading(list.Title);
                sheet.Table(list.Head, list.Rows, figures: false);
            }

            foreach (var card in view.Cards)
            {
                sheet.TurnPage();
                JobCardPdf.Draw(sheet, card, lifting[card.Chain]);
            }
        });
    }
}
