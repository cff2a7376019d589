using System.IO.Compression;
using System.Net;
using WearWatch.Dashboard.Planner;
using WearWatch.Plant.Planning;

namespace WearWatch.Dashboard.Tests.Planning;

/// <summary>The work package of a stop leaves the house whole: one PDF with all job cards, one book with all lists.</summary>
public sealed class WorkPackageFilesTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_paper_has_every_job_card_and_the_book_every_list()
    {
        await using var mill = await PlannedHost.OpenAsync();
        await mill.KeepAProposalAsync();
        var view = await mill.Get<KeptPlan>().AskAsync(Ct);
        var stop = view.Plan.Placements.First(p => p.Window is not null).Window!;
        var package = WorkPackage.Of(view, stop.Id)!;
        using var client = mill.Host.CreateClient();

        var paper = await client.GetByteArrayAsync(PackageWords.Address(stop.Id, ".pdf"), Ct);
        using var pdf = PdfSharp.Pdf.IO.PdfReader.Open(new MemoryStream(paper), PdfSharp.Pdf.IO.PdfDocumentOpenMode.Import);
        Assert.True(pdf.PageCount >= 1 + package.Steps.Count, $"{pdf.PageCount} pages for {package.Steps.Count} swaps");
        var book = await client.GetByteArrayAsync(PackageWords.Address(stop.Id, ".xlsx"), Ct);
        using var sheets = new ZipArchive(new MemoryStream(book));
        Assert.Equal(5, sheets.Entries.Count(e => e.FullName.StartsWith("xl/worksheets/sheet", StringComparison.Ordinal)));
        Assert.Equal(HttpStatusCode.NotFound, (await client.GetAsync("/plan/stop.xlsx?id=none", Ct)).StatusCode);
        var page = await client.GetStringAsync(PackageWords.Address(stop.Id), Ct);
        foreach (var step in package.Steps) Assert.Contains(step.Job.Face.Row.Name, page, StringComparison.Ordinal);
    }
}
