using System.Net;
using System.Text.RegularExpressions;

namespace WearWatch.Dashboard.Tests.Lifting;

/// <summary>
/// Every page, every answer, every print and every file tells of a chain that lifts nothing that may hurt someone, and bears the
/// caution where it names one. All routes are asked, for one chain of each kind in each state: a new one is asked, too.
/// </summary>
public sealed partial class ForbiddenAdviceTests(LiftingPlantHost plant) : IClassFixture<LiftingPlantHost>
{
    private int answered;

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    /// <summary>Routes of one chain, which tell the caution with it.</summary>
    public static TheoryData<string> PagesOfAChain => [.. LiftingAddresses.Pages.Where(LiftingAddresses.IsOfAChain)];

    /// <summary>The others: they may name chains.</summary>
    public static TheoryData<string> OtherPages => [.. LiftingAddresses.Pages.Where(r => !LiftingAddresses.IsOfAChain(r))];

    [Theory]
    [MemberData(nameof(PagesOfAChain))]
    public async Task A_page_of_a_chain_that_lifts_tells_the_caution_and_nothing_forbidden(string route)
    {
        List<string> faults = [];
        foreach (var address in LiftingAddresses.Of(route, plant)) faults.AddRange(await FaultsAsync(address, isOfAChain: true));
        Assert.True(faults.Count == 0, string.Join('\n', faults.Distinct()));
    }

    [Theory]
    [MemberData(nameof(OtherPages))]
    public async Task A_page_that_names_chains_that_lift_tells_the_caution_and_nothing_forbidden(string route)
    {
        List<string> faults = [];
        foreach (var address in LiftingAddresses.Of(route, plant)) faults.AddRange(await FaultsAsync(address, isOfAChain: false));
        Assert.True(faults.Count == 0, string.Join('\n', faults));
    }

    [Fact]
    public async Task Every_answer_print_and_file_tells_nothing_forbidden_and_the_caution_where_it_judges_a_chain()
    {
        List<string> faults = [];
        HashSet<string> silent = [];
        foreach (var route in LiftingAddresses.Files(plant))
        {
            var before = answered;
            foreach (var address in LiftingAddresses.Of(route, plant))
                faults.AddRange(await FaultsAsync(address, isOfAChain: false));
            if (answered == before) silent.Add(route);
        }

        Assert.True(faults.Count == 0, string.Join('\n', faults.Distinct()));

        // Photos, scans and imports never sent, a stop without a plan, effects that so few chains cannot teach: nothing there.
        Assert.True(silent.All(route => NeverSent().IsMatch(route)), string.Join('\n', silent));
    }

    [Fact]
    public async Task Papers_and_sheets_are_really_read()
    {
        var report = PaperText.OfPdf(await plant.Client.GetByteArrayAsync("/engineering/report.pdf", Ct));
        Assert.Contains("Lifting chains", report, StringComparison.Ordinal);
        Assert.Contains("leaf-found", report, StringComparison.Ordinal);
        var card = PaperText.OfPdf(await plant.Client.GetByteArrayAsync("/plan/card/leaf-past/job-card.pdf", Ct));
        Assert.Contains("Job card: swap chain leaf-past", card, StringComparison.Ordinal);
        Assert.True(AdviceText.HasCaution(card));
        var sheet = PaperText.OfSheet(await plant.Client.GetByteArrayAsync("/plan/swaps.xlsx", Ct));
        Assert.Contains("leaf-past", sheet, StringComparison.Ordinal);
        Assert.True(AdviceText.HasCaution(sheet));
    }

    private async Task<List<string>> FaultsAsync(string address, bool isOfAChain)
    {
        using var answer = await plant.Client.GetAsync(address, Ct);
        if (!answer.IsSuccessStatusCode)
        {
            // What must be told more, or has no such thing: other tests hold that, and a refusal gives no advice.
            Assert.True(!isOfAChain && answer.StatusCode < HttpStatusCode.InternalServerError, $"{address}: {answer.StatusCode}");
            return [];
        }

        answered++;
        if (await TextAsync(answer, address) is not { } text) return [];
        var faults = AdviceText.Forbidden(text).Select(s => $"{address}: {s}").ToList();
        var isPage = LiftingAddresses.IsOfAChain(address) || answer.Content.Headers.ContentType?.MediaType == "text/html";
        if ((isOfAChain || Judges(text)) && !AdviceText.HasCaution(text)) faults.Add($"{address}: no caution");
        if (isPage && AdviceText.ShowsGreen(text)) faults.Add($"{address}: green");
        return faults;
    }

    /// <summary>Whether a chain is named, with a word on how it is; raw entries as they were told judge nothing.</summary>
    private static bool Judges(string text) =>
        LiftingChains.Names.Any(name => text.Contains(name, StringComparison.Ordinal)) && AdviceText.Judges(text);

    /// <summary>The text of an answer; null for pictures, fonts and the like. A kind that is not known fails.</summary>
    private static async Task<string?> TextAsync(HttpResponseMessage answer, string address)
    {
        var kind = answer.Content.Headers.ContentType?.MediaType ?? "";
        var bytes = await answer.Content.ReadAsByteArrayAsync(Ct);
        return kind switch
        {
            "application/pdf" => PaperText.OfPdf(bytes),
            "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet" => PaperText.OfSheet(bytes),

            // The same rows as the CSV of the same name, which is read.
            "application/vnd.apache.parquet" => null,
            _ when IsText().IsMatch(kind) => System.Text.Encoding.UTF8.GetString(bytes),
            _ when IsPicture().IsMatch(kind) => null,
            _ => throw new InvalidOperationException($"{address}: how is {kind} read?"),
        };
    }

    [GeneratedRegex("/photos/|/papers/|/imports?/|/drivers/effects|/plan/stop[.]")]
    private static partial Regex NeverSent();

    [GeneratedRegex("^text/|json|javascript|xml")]
    private static partial Regex IsText();

    [GeneratedRegex("^image/|^font/")]
    private static partial Regex IsPicture();
}
