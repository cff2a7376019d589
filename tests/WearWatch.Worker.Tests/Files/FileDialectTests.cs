using System.Text;
using WearWatch.Plant.Files;

namespace WearWatch.Worker.Tests.Files;

/// <summary>Files as the spreadsheets of Europe write them, and what no program can tell apart.</summary>
public sealed class FileDialectTests
{
    private static readonly TimeZoneInfo Vienna = TimeZoneInfo.FindSystemTimeZoneById("Europe/Vienna");

    [Fact]
    public void A_German_sheet_with_semicolons_commas_and_days_first_is_read_and_said_so()
    {
        var items = Rows(
            "chain;taken_at;counter_h;tool;pitches;length;unit;temperature_c",
            "P-1;03.04.2026 14:30;12.400,5;tape;40;1018,4;mm;18,5",
            "P-1;3.5.2026;12900;tape;40;1019;mm;");
        Assert.Equal(
            "Read with semicolons between the columns, the comma as decimal sign, the day before the month.",
            Assert.IsType<FileItem.Noted>(items[0]).Reason.ToString());
        var reading = Assert.IsType<FileItem.Measured>(items[1]).Reading;
        Assert.Equal(
            (new DateTimeOffset(2026, 4, 3, 12, 30, 0, TimeSpan.Zero), 12400.5, 1018.4, 18.5, "1018.4"),
            (reading.TakenAt!.Value, reading.Counter!.Value.Hours, reading.LengthMm, reading.TemperatureC!.Value,
                reading.Written));
        Assert.Equal(
            new DateTime(2026, 5, 2, 22, 0, 0), Assert.IsType<FileItem.Measured>(items[2]).Reading.TakenAt!.Value.UtcDateTime);
    }

    [Fact]
    public void Tabs_points_and_months_first_are_read_too()
    {
        var items = Rows(
            "chain\ttaken_at\tcounter_h\ttool\tpitches\tlength\tunit", "P-1\t4/3/2026\t12,400.5\ttape\t40\t1018.4\tmm",
            "P-1\t4/23/2026\t12,900\ttape\t40\t1019.2\tmm");
        Assert.Equal(
            [(12400.5, 3), (12900.0, 23)],
            items.OfType<FileItem.Measured>()
                .Select(m => (m.Reading.Counter!.Value.Hours, TimeZoneInfo.ConvertTime(m.Reading.TakenAt!.Value, Vienna).Day)));
        Assert.Contains("tabs between the columns, the month before the day",
            Assert.IsType<FileItem.Noted>(items[0]).Reason.ToString(),
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1.234", "Write all digits")]
    [InlineData("1,234", "Write all digits")]
    public void A_number_that_can_be_read_in_two_ways_is_refused(string counter, string reason)
    {
        var items = Rows("chain;counter_h;tool;pitches;length;unit", $"P-1;{counter};tape;40;1018;mm");
        Assert.Contains(reason, Assert.IsType<FileItem.Unreadable>(items[^1]).Reason.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_point_in_a_file_of_commas_is_refused_unless_it_parts_thousands()
    {
        var items = Rows(
            "chain;counter_h;tool;pitches;length;unit", "P-1;100;tape;40;1018,4;mm", "P-1;200;tape;40;1018,55;mm",
            "P-1;3.000;tape;40;1018,6;mm");
        Assert.Equal([100, 200, 3000], items.OfType<FileItem.Measured>().Select(m => m.Reading.Counter!.Value.Hours));
        var mixed = Rows("chain;counter_h;tool;pitches;length;unit", "P-1;100;tape;40;1018,4;mm", "P-1;200;tape;40;1018.4;mm");
        Assert.Equal(2, mixed.OfType<FileItem.Unreadable>().Count(i => i.Column == "length"));
    }

    [Fact]
    public void A_date_that_can_be_read_in_two_ways_is_refused_and_one_day_above_twelve_settles_it()
    {
        const string Header = "chain,taken_at,tool,pitches,length,unit";
        var open = Assert.IsType<FileItem.Unreadable>(Assert.Single(Rows(Header, "P-1,03/04/2026,tape,40,1018.4,mm")));
        Assert.Equal("taken_at", open.Column);
        Assert.Contains("2026-04-03", open.Reason.ToString(), StringComparison.Ordinal);
        var told = Rows(Header, "P-1,03/04/2026,tape,40,1018.4,mm", "P-1,23/04/2026,tape,40,1018.6,mm");
        Assert.Equal(
            [3, 23], told.OfType<FileItem.Measured>()
                .Select(m => TimeZoneInfo.ConvertTime(m.Reading.TakenAt!.Value, Vienna).Day));
    }

    [Fact]
    public void A_register_in_Windows_letters_keeps_its_umlauts()
    {
        var bytes = Encoding.Latin1.GetBytes("chain;line;family;pitch_mm\nKratzförderer;Späne;conveyor;100,5\n");
        var items = new PlantFile(A.File("chains.csv", bytes), Vienna).Rows().ToList();
        var card = Assert.IsType<FileItem.Chain>(items[1]).Card;
        Assert.Equal(("Kratzförderer", "Späne", 100.5), (card.Name, card.Line, card.PitchMm));
    }

    [Theory]
    [InlineData("utf-16")]
    [InlineData("utf-16BE")]
    public void Unicode_text_of_a_spreadsheet_is_read(string name)
    {
        var letters = Encoding.GetEncoding(name);
        byte[] bytes = [.. letters.GetPreamble(),
            .. letters.GetBytes("chain\tcounter_h\ttool\tpitches\tlength\tunit\nFörderer\t100\ttape\t40\t1018,4\tmm\n")];
        var items = new PlantFile(A.File("readings.csv", bytes), Vienna).Rows().ToList();
        Assert.Equal("Förderer", Assert.IsType<FileItem.Measured>(items[^1]).Reading.Chain);
    }

    private static List<FileItem> Rows(params string[] lines) =>
        [.. new PlantFile(A.File("readings.csv", string.Join('\n', lines) + "\n"), Vienna).Rows()];
}
