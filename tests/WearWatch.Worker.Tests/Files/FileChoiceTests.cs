using System.Text;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;

namespace WearWatch.Worker.Tests.Files;

/// <summary>What a person says of a file goes before what its rows tell, and its own column names are learned.</summary>
public sealed class FileChoiceTests
{
    private const string German = "Kette;Datum;Stunden;Mittel;Glieder;Laenge;Einheit;Bemerkung";

    private static readonly TimeZoneInfo Vienna = TimeZoneInfo.FindSystemTimeZoneById("Europe/Vienna");

    private static readonly FileChoice Mapped = new()
    {
        Kind = FileKind.Readings,
        Columns = new Dictionary<string, string>
        {
            ["kette"] = "chain",
            ["datum"] = "taken_at",
            ["stunden"] = "counter_h",
            ["mittel"] = "tool",
            ["glieder"] = "pitches",
            ["laenge"] = "length",
            ["einheit"] = "unit",
            ["bemerkung"] = "",
        },
    };

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public void A_file_with_names_of_its_own_is_split_and_read_by_the_columns_that_a_person_names()
    {
        var file = A.File("export.csv", $"{German}\nC1;03.04.2026;12.400,5;tape;40;1018,4;mm;gut\n");
        var look = FileLook.Of(file);
        Assert.Equal((FileKind.Unknown, ';', 8), (look.Kind, look.Dialect.Separator, look.Columns.Count));
        var items = new PlantFile(file with { Choice = Mapped }, Vienna).Rows().ToList();
        var reading = Assert.IsType<FileItem.Measured>(items[^1]).Reading;
        Assert.Equal((12400.5, 1018.4), (reading.Counter!.Value.Hours, reading.LengthMm));
        Assert.DoesNotContain(items, i => i is FileItem.Noted { Column.Length: > 0 });
    }

    [Theory]
    [InlineData('.', 1.234)]
    [InlineData(',', 1234.0)]
    public void A_number_that_can_be_read_in_two_ways_is_read_as_the_person_says(char sign, double hours)
    {
        var file = A.File("readings.csv", "chain;counter_h;tool;pitches;length;unit\nC1;1,234;tape;40;1018;mm\n");
        var items = new PlantFile(file with { Choice = new FileChoice { DecimalSign = sign == '.' ? ',' : '.' } }, Vienna).Rows();
        Assert.Equal(hours, Assert.IsType<FileItem.Measured>(items.Last()).Reading.Counter!.Value.Hours);
    }

    [Theory]
    [InlineData(DateOrder.DayFirst, 4)]
    [InlineData(DateOrder.MonthFirst, 3)]
    public void A_date_that_can_be_read_in_two_ways_is_read_as_the_person_says(DateOrder order, int month)
    {
        var file = A.File("readings.csv", "chain,taken_at,tool,pitches,length,unit\nC1,03/04/2026 12:00,tape,40,1018.4,mm\n");
        var items = new PlantFile(file with { Choice = new FileChoice { Dates = order } }, Vienna).Rows();
        Assert.Equal(month, Assert.IsType<FileItem.Measured>(items.Last()).Reading.TakenAt!.Value.Month);
    }

    [Fact]
    public void Letters_of_a_code_page_that_no_bytes_tell_are_read_as_the_person_says()
    {
        var bytes = CodePagesEncodingProvider.Instance.GetEncoding(1250)!
            .GetBytes("chain;family;pitch_mm\nŘetěz;roller;25,4\n");
        var file = A.File("chains.csv", bytes) with { Choice = new FileChoice { CodePage = 1250 } };
        var items = new PlantFile(file, Vienna).Rows();
        Assert.Equal("Řetěz", Assert.IsType<FileItem.Chain>(items.Last()).Card.Name);
    }

    [Fact]
    public async Task Columns_named_once_are_remembered_for_every_file_of_that_kind()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        var first = A.File("april.csv", $"{German}\nC1;03.04.2026;100,5;tape;40;1018,4;mm;\n");
        Assert.Equal(0, (await plant.Import.ImportAsync([first], null, Ct)).Taken);
        Assert.Equal(1, (await plant.Import.ImportAsync([first with { Choice = Mapped }], null, Ct)).Taken);
        var next = A.File("mai.csv", "Laenge;Kette;Datum;Mittel;Glieder;Einheit\n1019,2;C1;03.05.2026;tape;40;mm\n");
        var report = await plant.Import.ImportAsync([next], null, Ct);
        Assert.Equal((1, 0), (report.Taken, report.Refused));
    }

    [Fact]
    public async Task Refused_rows_come_back_as_a_file_that_is_corrected_and_imported_again()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        var file = A.File("readings.csv",
            "chain;counter_h;tool;pitches;length;unit\nC1;100,5;tape;40;1018,4;mm\nC1;200,5;tape;0;1018,9;mm\n"
            + "C2;90;tape;40;1018;mm\n");
        var report = await plant.Import.ImportAsync([file], null, Ct);
        Assert.Equal((1, 2), (report.Taken, report.Refused));
        var refused = report.Files[0].RefusedRows!.Text(why => why.ToString());
        var rows = refused.Split("\r\n");
        Assert.Equal("chain;counter_h;tool;pitches;length;unit;why_refused", rows[0]);
        Assert.StartsWith("C1;200,5;tape;0;1018,9;mm;", rows[1], StringComparison.Ordinal);
        Assert.Contains("not in the register", rows[2], StringComparison.Ordinal);
        await using (var db = plant.Db())
            Assert.Equal(refused, RefusedRows.TextOf(
                db.Imports.Single(i => i.FileName == "readings.csv").RefusedRows, why => why.ToString()));
        var corrected = refused.Replace("tape;0;", "tape;40;", StringComparison.Ordinal);
        var again = await plant.Import.ImportAsync([A.File("readings-refused.csv", corrected)], null, Ct);
        Assert.Equal((1, 1), (again.Taken, again.Refused));
        Assert.DoesNotContain(again.Files[0].Remarks, r => r.Column == FileColumns.WhyRefused);
    }
}
