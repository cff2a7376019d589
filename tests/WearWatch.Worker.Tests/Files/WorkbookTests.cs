using WearWatch.Plant.Files;

namespace WearWatch.Worker.Tests.Files;

/// <summary>Workbooks are read as the text that they would be saved as, with their own numbers and dates.</summary>
public sealed class WorkbookTests
{
    private static readonly TimeZoneInfo Vienna = TimeZoneInfo.FindSystemTimeZoneById("Europe/Vienna");

    private static readonly object?[] Header = ["chain", "taken_at", "counter_h", "tool", "pitches", "length", "unit"];

    [Fact]
    public void Numbers_and_dates_of_cells_are_read_whatever_the_country_and_a_row_keeps_its_number()
    {
        var items = Rows(SheetFile.Of("readings.xlsx", ("Messungen",
        [
            Header, null, ["P-1", new DateTime(2026, 4, 3, 14, 30, 0), 12400.5, "tape", 40, 1018.4, "mm"],
            ["P-1", new DateTime(2026, 5, 3), 12900, "tape", 0, 1019, "mm"],
        ])));
        Assert.Equal("Read from the sheet 'Messungen'.", Assert.IsType<FileItem.Noted>(items[0]).Reason.ToString());
        var reading = Assert.IsType<FileItem.Measured>(items[1]);
        Assert.Equal(
            (3, new DateTimeOffset(2026, 4, 3, 12, 30, 0, TimeSpan.Zero), 12400.5, 1018.4),
            (reading.Line, reading.Reading.TakenAt!.Value, reading.Reading.Counter!.Value.Hours, reading.Reading.LengthMm));
        Assert.Equal((4, "pitches"), Assert.IsType<FileItem.Unreadable>(items[2]) is var bad ? (bad.Line, bad.Column) : default);
    }

    [Fact]
    public void The_first_sheet_that_holds_rows_is_read_the_others_are_named_and_another_can_be_chosen()
    {
        var book = SheetFile.Of("plant.xlsx",
            ("Cover", []), ("Chains", [["chain", "pitch_mm"], ["P-1", 25.4]]), ("Readings", [Header]));
        Assert.Contains("Not read: Cover, Readings.", Assert.IsType<FileItem.Noted>(Rows(book)[0]).Reason.ToString(),
            StringComparison.Ordinal);
        Assert.Equal("P-1", Assert.IsType<FileItem.Chain>(Rows(book)[1]).Card.Name);
        var other = Workbook.AsText(book with { Choice = new FileChoice { Sheet = "Readings" } });
        Assert.Equal(FileKind.Readings, new PlantFile(other, Vienna).Kind);
    }

    [Fact]
    public void What_is_named_a_workbook_and_is_none_is_refused_in_plain_words()
    {
        var broken = A.File("readings.xlsx", [0x50, 0x4B, 0x03, 0x04, 0, 0, 1, 2, 3]);
        Assert.Contains("Save the sheet as xlsx or as CSV UTF-8",
            Assert.IsType<FileItem.Unreadable>(Rows(broken)[0]).Reason.ToString(),
            StringComparison.Ordinal);
        var text = A.File("readings.xlsx", $"{A.ReadingsHeader}\n{A.Row()}\n");
        Assert.IsType<FileItem.Measured>(Assert.Single(Rows(text)));
    }

    private static List<FileItem> Rows(ImportFile file) => [.. new PlantFile(Workbook.AsText(file), Vienna).Rows()];
}
