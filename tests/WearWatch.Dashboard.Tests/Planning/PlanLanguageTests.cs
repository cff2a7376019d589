using System.Text;
using WearWatch.Dashboard.Tests.Lifting;

namespace WearWatch.Dashboard.Tests.Planning;

/// <summary>What is printed and subscribed speaks the person's language; files for programs stay as they are.</summary>
public sealed class PlanLanguageTests
{
    [Theory]
    [InlineData("de", "Arbeitskarte: Kette D-2 austauschen", "Teilung 25,4 mm", "SUMMARY:Kette D-2 austauschen")]
    [InlineData("es", "Ficha de trabajo: sustituir la cadena D-2", "paso 25,4 mm", "SUMMARY:Sustituir la cadena D-2")]
    public async Task Job_cards_and_calendars_speak_the_language_and_lists_keep_theirs(
        string code, string title, string pitch, string summary)
    {
        await using var mill = await PlannedHost.OpenAsync();
        await mill.KeepAProposalAsync();
        using var client = mill.Host.CreateClient();
        client.DefaultRequestHeaders.Add("Cookie", $"language={code}");
        Task<byte[]> Get(string path) => client.GetByteArrayAsync(path, TestContext.Current.CancellationToken);

        var card = PaperText.OfPdf(await Get("/plan/card/D-2/job-card.pdf"));
        Assert.Contains(title, card, StringComparison.Ordinal);
        Assert.Contains(pitch, card, StringComparison.Ordinal);
        Assert.Contains(summary, Encoding.UTF8.GetString(await Get("/plan/calendar/Debarking.ics")), StringComparison.Ordinal);

        var swaps = Encoding.UTF8.GetString(await Get("/plan/swaps.csv"));
        Assert.StartsWith("chain,line,position,chain_type,pitches,shutdown_start", swaps, StringComparison.Ordinal);
        var orders = Encoding.UTF8.GetString(await Get("/plan/orders.csv"));
        Assert.Contains("16B-1 offset link,pieces,no,1,", orders, StringComparison.Ordinal);
    }
}
