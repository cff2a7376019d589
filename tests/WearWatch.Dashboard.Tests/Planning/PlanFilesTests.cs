using System.IO.Compression;
using System.Net;
using System.Text;
using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Dashboard.Planner;
using WearWatch.Plant.Planning;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Tests.Planning;

public sealed class PlanFilesTests
{
    [Fact]
    public async Task Lists_sheets_calendars_and_job_cards_leave_the_house_whole()
    {
        await using var mill = await PlannedHost.OpenAsync();
        await mill.KeepAProposalAsync();
        using var client = mill.Host.CreateClient();
        async Task<byte[]> Get(string path) => await client.GetByteArrayAsync(path, TestContext.Current.CancellationToken);

        var swaps = Encoding.UTF8.GetString(await Get("/plan/swaps.csv")).Split("\r\n");
        Assert.Equal(6, swaps.Length); // head, four swaps, and what stands after the last line's end
        Assert.StartsWith("chain,line,position,chain_type,pitches,shutdown_start", swaps[0], StringComparison.Ordinal);
        Assert.StartsWith("D-1,Debarking,drive,16B-1,80,20", swaps[1], StringComparison.Ordinal);
        var orders = Encoding.UTF8.GetString(await Get("/plan/orders.csv"));
        Assert.Contains("16B-1 offset link,pieces,no,1,", orders, StringComparison.Ordinal);

        using var sheet = new ZipArchive(new MemoryStream(await Get("/plan/orders.xlsx")));
        Assert.Contains(sheet.Entries, e => e.FullName == "xl/worksheets/sheet1.xml");

        var calendar = Encoding.UTF8.GetString(await Get("/plan/calendar/Debarking.ics"));
        Assert.Equal(2, calendar.Split("BEGIN:VEVENT").Length - 1);
        Assert.Contains("SUMMARY:Swap chain D-2", calendar, StringComparison.Ordinal);
        var nowhere = await client.GetAsync("/plan/calendar/Nowhere.ics", TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.NotFound, nowhere.StatusCode);

        var card = await Get("/plan/card/D-2/job-card.pdf");
        Assert.Equal("%PDF-1."u8, card.AsSpan(0, 7));
        using var read = PdfSharp.Pdf.IO.PdfReader.Open(new MemoryStream(card), PdfSharp.Pdf.IO.PdfDocumentOpenMode.Import);
        Assert.Equal(1, read.PageCount);
    }

    [Fact]
    public async Task A_job_card_names_the_cut_the_links_the_sprockets_and_the_cautions()
    {
        await using var mill = await PlannedHost.OpenAsync();
        await mill.KeepAProposalAsync();
        var card = (await mill.Get<JobCardQuery>().AskAsync("D-2", TestContext.Current.CancellationToken))!;
        Assert.Contains(("Length", "81 pitches: cut 79 pitches + 1 connecting link + 1 offset link"), card.Facts);
        Assert.Contains(("Sprockets", "17 teeth and 57 teeth: look at their teeth"), card.Facts);
        Assert.Contains(Caution.BeforeTouching.ToString(), card.Cautions);
        Assert.Null(await mill.Get<JobCardQuery>().AskAsync("nobody", TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task Sprockets_that_go_with_a_chain_stand_on_its_job_card()
    {
        await using var mill = await PlannedHost.OpenAsync();
        var terms = new SwapTermsLine("D-1", "", "", 6, 2, WithSprockets: true);
        await mill.Get<PlanInputs>().SaveAsync(terms, TestContext.Current.CancellationToken);
        var card = await mill.Get<JobCardQuery>().AskAsync("D-1", TestContext.Current.CancellationToken);
        const string parts =
            "79 pitches of chain 16B-1, 1 connecting link 16B-1, 1 sprocket 16B-1 z17, 1 sprocket 16B-1 z57";
        Assert.Contains(("From the store", parts), card!.Facts);
        Assert.Contains(("Sprockets", "17 teeth and 57 teeth: replace them with the chain"), card.Facts);
    }

    // RFC 4180, 2: fields with commas, quotes or line breaks are quoted, quotes are doubled.
    [Fact]
    public void Csv_quotes_what_must_be_quoted_and_lets_no_name_become_a_formula() => Assert.Equal(
        "a,b\r\n\"x,y\",\"say \"\"hi\"\"\"\r\n'=1+1,-2\r\n",
        PlanFiles.CsvText(new PlanTable("t", ["a", "b"], [["x,y", "say \"hi\""], ["=1+1", -2]])));

    [Fact]
    public void Every_kind_of_chain_has_tools_and_steps_that_begin_with_the_lock()
    {
        foreach (var family in ChainFamily.All)
        {
            Assert.Contains("lock", JobCard.StepsFor(family, family.Cut(80), 80)[0], StringComparison.Ordinal);
            Assert.NotEmpty(JobCard.ToolsFor(family));
            Assert.NotEmpty(LiftingJob.ToolsFor(family));
        }

        Assert.Contains("lock", LiftingJob.StepsFor(80, ["C1"])[0], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_job_card_of_a_chain_that_holds_a_load_tells_of_the_set_the_certificate_the_tag_and_the_competent_person()
    {
        await using var mill = await PlannedHost.OpenAsync();
        await using (var db = await mill.Host.OpenAsync())
        {
            foreach (var chain in db.Chains.Where(c => c.Line == "Debarking").ToArray())
            {
                chain.Lifts = true;
                db.LiftingCards.Add(
                    new LiftingCardRow { ChainId = chain.Id, Key = chain.Name, By = "Ann", ChainSet = "hoist 1" });
            }

            await db.SaveChangesAsync(TestContext.Current.CancellationToken);
        }

        var card = (await mill.Get<JobCardQuery>().AskAsync("D-2", TestContext.Current.CancellationToken))!;
        Assert.Equal("Out of use", card.Facts[0].Name);
        Assert.StartsWith("It holds a load. Out of use from ", card.Facts[0].Value, StringComparison.Ordinal);
        Assert.Contains(("Swapped together with", "D-1"), card.Facts);
        Assert.Contains(("Length", "81 pitches, a whole chain as it comes with its certificate"), card.Facts);
        Assert.Contains(("From the store", "81 pitches of chain 16B-1"), card.Facts);
        var all = string.Join(' ', [.. card.Steps, .. card.Tools, .. card.ToWrite]);
        foreach (var word in new[] { "quarantine", "whole set", "D-2, D-1", "certificate", "competent person", "pins", "block" })
            Assert.Contains(word, all, StringComparison.Ordinal);
        foreach (var word in new[] { "offset link", "connecting link", "cut ", "chain breaker", "Take out" })
            Assert.DoesNotContain(word, all.Replace("never cut, ", "", StringComparison.Ordinal), StringComparison.Ordinal);

    }

    [Fact]
    public async Task What_leaves_the_house_names_first_what_is_out_of_use()
    {
        await using var mill = await PlannedHost.OpenAsync();
        await using (var db = await mill.Host.OpenAsync())
        {
            db.Chains.Single(c => c.Name == "P-2").Lifts = true;
            db.Chains.Add(new ChainRow { Name = "H-9", Line = "Press", PitchMm = 25.4, Lifts = true });
            await db.SaveChangesAsync(TestContext.Current.CancellationToken);
        }

        using var client = mill.Host.CreateClient();
        async Task<string> Get(string path) => await client.GetStringAsync(path, TestContext.Current.CancellationToken);
        var swaps = (await Get("/plan/swaps.csv")).Split("\r\n");
        Assert.StartsWith("P-2,Press,", swaps[1], StringComparison.Ordinal);
        Assert.Contains("It holds a load. Out of use from ", swaps[1], StringComparison.Ordinal);
        Assert.Contains(swaps, row => row.StartsWith("H-9,Press,", StringComparison.Ordinal)
            && row.Contains("cannot be judged", StringComparison.Ordinal));
        var calendar = (await Get("/plan/calendar/Press.ics")).Replace("\r\n ", "", StringComparison.Ordinal);
        Assert.Contains("SUMMARY:Out of use from now on: chain P-2", calendar, StringComparison.Ordinal);
    }
}
