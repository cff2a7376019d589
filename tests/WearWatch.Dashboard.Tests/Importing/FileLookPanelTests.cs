using System.Text;
using Bunit;
using Microsoft.Extensions.DependencyInjection;
using WearWatch.Dashboard.Administration.Importing;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;

namespace WearWatch.Dashboard.Tests.Importing;

/// <summary>What a person says of a file before it is taken in.</summary>
public sealed class FileLookPanelTests : BunitContext
{
    [Fact]
    public async Task What_is_said_next_builds_on_what_was_said_though_the_file_was_not_read_anew()
    {
        await using var host = new DashboardHost();
        Services.AddSingleton(host.Get<FileImport>());
        var file = new ImportFile("anlagen.csv", () => new MemoryStream(
            Encoding.UTF8.GetBytes("Kette;Linie;Typ\nA-1;Presse;16B-1\n")))
        {
            By = "Ina",
            Choice = new FileChoice { Kind = FileKind.Chains },
        };
        List<ImportFile> said = [];
        // Whoever asked for the panel is slow: its file stays the one of before.
        var panel = Render<FileLookPanel>(p => p.Add(x => x.File, file).Add(x => x.Changed, said.Add));
        panel.WaitForElement(Column("Kette"), TimeSpan.FromSeconds(30)).Change("chain");
        panel.Find(Column("Linie")).Change("line");
        panel.Find(Column("Typ")).Change("chain_type");
        Assert.Equal(
            ["kette chain", "linie line", "typ chain_type"],
            said[^1].Choice.Columns.Select(c => $"{c.Key} {c.Value}").Order());
    }

    private static string Column(string theirs) => $"select[aria-label='Column {theirs} is read as']";
}
