using System.Net;
using System.Text;
using Microsoft.EntityFrameworkCore;
using WearWatch.Phrases;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Telemetry;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Tests.Language;

/// <summary>Why rows and messages were not taken is kept with its facts, and read in each reader's language.</summary>
public sealed class KeptReasonTests : IAsyncLifetime
{
    private readonly DashboardHost plant = new();

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public ValueTask InitializeAsync()
    {
        plant.CreateClient().Dispose(); // starts the host, which opens the database
        return ValueTask.CompletedTask;
    }

    public ValueTask DisposeAsync() => plant.DisposeAsync();

    [Theory]
    [InlineData("en", "is not in the register", "There is no chain 'K-8' in the register")]
    [InlineData("de", "steht nicht im Verzeichnis", "Es gibt keine Kette 'K-8' im Verzeichnis")]
    [InlineData("es", "no est\u00e1 en el registro", "No hay ninguna cadena 'K-8' en el registro")]
    public async Task A_refused_row_and_a_message_set_aside_say_why_in_the_reader_s_language(
        string code, string row, string message)
    {
        await plant.Get<FileImport>().ImportAsync([Readings("K-9")], null, Ct);
        await plant.Get<TelemetryDesk>().TakeAsync(
            [
                new Arrival("wearwatch/v1/plant/K-8/running",
                    Encoding.UTF8.GetBytes("{\"id\":\"a\",\"at\":\"2026-06-01T12:00:00Z\",\"on\":true}")),
            ], Ct);
        using var reader = In(code);
        await using var db = await plant.OpenAsync();
        var id = await db.Imports.Select(i => i.Id).SingleAsync(Ct);
        var file = await reader.GetStringAsync($"/import/{id}/refused.csv", Ct);
        Assert.StartsWith("chain,counter_h,tool,pitches,length,unit,why_refused\r\nK-9,100,tape,48,1222.8,mm,", file,
            StringComparison.Ordinal);
        Assert.Contains($"'K-9' {row}", file, StringComparison.Ordinal);
        Assert.Contains(row, await PageAsync(reader, "/import"), StringComparison.Ordinal);
        Assert.Contains(message, await PageAsync(reader, "/data-sources"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_was_kept_as_sentences_before_is_shown_as_it_was_written()
    {
        await using var db = await plant.OpenAsync();
        var old = new ImportRow
        {
            FileName = "old.csv",
            Sha256 = "0",
            Refused = 1,
            Report = Phrase.None,
            RefusedRows = "chain,why_refused\r\nK-9,No such chain {yet}.\r\n",
        };
        db.Imports.Add(old);
        await db.SaveChangesAsync(Ct);
        await db.Database.ExecuteSqlAsync($"UPDATE \"Imports\" SET \"Report\" = {"old.csv:2: No such chain {yet}."}", Ct);
        using var reader = In("de");
        Assert.Equal(old.RefusedRows, await reader.GetStringAsync($"/import/{old.Id}/refused.csv", Ct));
        Assert.Contains("old.csv:2: No such chain {yet}.", await reader.GetStringAsync("/import", Ct), StringComparison.Ordinal);
    }

    private static ImportFile Readings(string chain) => new("readings.csv", () => new MemoryStream(Encoding.UTF8.GetBytes(
        $"chain,counter_h,tool,pitches,length,unit\n{chain},100,tape,48,1222.8,mm\n")))
    { By = "Ina" };

    private static async Task<string> PageAsync(HttpClient reader, string address) =>
        WebUtility.HtmlDecode(await reader.GetStringAsync(address, Ct));

    private HttpClient In(string code)
    {
        var client = plant.CreateClient();
        client.DefaultRequestHeaders.Add("Cookie", $"language={code}");
        return client;
    }
}
