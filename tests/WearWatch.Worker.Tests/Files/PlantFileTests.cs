using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Plant.Files;
using WearWatch.Running;

namespace WearWatch.Worker.Tests.Files;

/// <summary>
/// What stands in a file is read, and what is wrong with it is said with line and column (formats: docs/units-and-formats.md).
/// </summary>
public sealed class PlantFileTests
{
    private static readonly TimeZoneInfo Vienna = TimeZoneInfo.FindSystemTimeZoneById("Europe/Vienna");

    [Fact]
    public void A_reading_is_read_as_it_stands()
    {
        var item = Assert.IsType<FileItem.Measured>(
            Assert.Single(Rows(A.Readings("C1,2026-03-01T14:30+01:00,512.5,caliper,drive side,14,10 5/8,in,-4.5"))));
        Assert.Equal(2, item.Line);
        Assert.Equal(("10 5/8", Units.LengthUnit.Inch), (item.Reading.Written, item.Reading.Unit));
        Assert.Equal(new Reading
        {
            Chain = "C1",
            TakenAt = new DateTimeOffset(2026, 3, 1, 13, 30, 0, TimeSpan.Zero),
            Counter = new RunningHours(512.5),
            Tool = Tool.Caliper,
            Place = "drive side",
            Pitches = 14,
            LengthMm = 269.875, // 10.625 in x 25.4 mm
            Written = "10 5/8",
            Unit = Units.LengthUnit.Inch,
            TemperatureC = -4.5,
        }, item.Reading);
    }

    [Fact]
    public void Strand_and_hold_are_read_where_a_file_has_them()
    {
        var file = A.File("readings.csv", A.ReadingsHeader + ",strand,taut,load_n\n"
            + "C1,,100,tape,,40,1020,mm,,2,yes,\nC1,,100,caliper,,14,258.6 inside 282.4 "
            + "outside,mm,,,,556.5\nC1,,100,tape,,40,1020,mm,,,,\n");
        var readings = Rows(file).Cast<FileItem.Measured>().Select(m => m.Reading).ToList();
        Assert.Equal([(2, Held.Taut, 1020), (null, Held.Under(556.5), 270.5), (null, default, 1020)],
            readings.Select(r => (r.Strand, r.Held, r.LengthMm)));
    }

    [Theory]
    [InlineData("0,,", "strand", "range")]
    [InlineData("1.5,,", "strand", "whole")]
    [InlineData("1,perhaps,", "taut", "yes, no")]
    [InlineData("1,,-5", "load_n", "range")]
    [InlineData("1,yes,300", "load_n", "leave one empty")]
    public void A_strand_or_hold_that_cannot_be_is_said_with_its_column(string fields, string column, string reason)
    {
        var file = A.File("readings.csv", $"{A.ReadingsHeader},strand,taut,load_n\nC1,,100,tape,,40,1020,mm,,{fields}\n");
        var fault = Assert.IsType<FileItem.Unreadable>(Assert.Single(Rows(file)));
        Assert.Equal(column, fault.Column);
        Assert.Contains(reason, fault.Reason.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2026-07-01T08:00", "2026-07-01T06:00Z")] // Vienna has summer time, two hours ahead
    [InlineData("2026-01-15 08:00:30", "2026-01-15T07:00:30Z")]
    [InlineData("2026-01-15", "2026-01-14T23:00Z")]
    [InlineData("2026-01-15T08:00Z", "2026-01-15T08:00Z")]
    [InlineData("2026-01-15T08:00:00.25-05:00", "2026-01-15T13:00:00.25Z")]
    public void A_time_without_an_offset_is_meant_in_plant_time(string written, string meant)
    {
        var item = Assert.IsType<FileItem.Measured>(Assert.Single(Rows(A.Readings($"C1,{written},,tape,,40,1020,mm,"))));
        Assert.Equal(DateTimeOffset.Parse(meant, System.Globalization.CultureInfo.InvariantCulture), item.Reading.TakenAt);
    }

    [Theory]
    [InlineData("C1,,100,tape,,40,long,mm,", "length", "not a length")]
    [InlineData("C1,,100,tape,,40,,mm,", "length", "Empty")]
    [InlineData("C1,,100,tape,,40,\"1020,5\",mm,", "length", "point")]
    [InlineData("C1,,\"100,5\",tape,,40,1020,mm,", "counter_h", "point")]
    [InlineData("C1,,many,tape,,40,1020,mm,", "counter_h", "not a number")]
    [InlineData("C1,,-1,tape,,40,1020,mm,", "counter_h", "range")]
    [InlineData("C1,,NaN,tape,,40,1020,mm,", "counter_h", "not a number")]
    [InlineData("C1,,100,tape,,0,1020,mm,", "pitches", "range")]
    [InlineData("C1,,100,tape,,-3,1020,mm,", "pitches", "range")]
    [InlineData("C1,,100,tape,,2.5,1020,mm,", "pitches", "whole")]
    [InlineData("C1,,100,tape,,,1020,mm,", "pitches", "Empty")]
    [InlineData("C1,,100,ruler,,40,1020,mm,", "tool", "tape, caliper, sensor")]
    [InlineData("C1,,100,,,40,1020,mm,", "tool", "Empty")]
    [InlineData("C1,,100,tape,,40,1020,cm,", "unit", "mm, in")]
    [InlineData("C1,,100,tape,,40,40 3/16,mm,", "length", "unit column")]
    [InlineData("C1,,100,tape,,40,40 3/17,in,", "length", "3/17")]
    [InlineData("C1,,100,tape,,40,1020,mm,hot", "temperature_c", "not a number")]
    [InlineData("C1,,100,tape,,40,1020,mm,900", "temperature_c", "range")]
    [InlineData("C1,01/03/2026,100,tape,,40,1020,mm,", "taken_at", "day or the month")]
    [InlineData("C1,2026-02-30,100,tape,,40,1020,mm,", "taken_at", "ISO 8601")]
    [InlineData("C1,,,tape,,40,1020,mm,", "counter_h", "time or the hour counter")]
    [InlineData(",,100,tape,,40,1020,mm,", "chain", "Empty")]
    [InlineData("C1,,100,tape,,40,1020,mm", "", "8 fields where the header has 9")]
    [InlineData("C1,,100,tape,,40,1020,5,mm,", "", "10 fields where the header has 9")]
    [InlineData("C1,,100,tape,a\"b,40,1020,mm,", "", "quotation mark")]
    public void What_is_wrong_with_a_reading_is_said_with_line_and_column(string row, string column, string reason)
    {
        var items = Rows(A.Readings(A.Row(), row, A.Row(counterH: 200))).ToList();
        var fault = Assert.IsType<FileItem.Unreadable>(items[1]);
        Assert.Equal((3, column), (fault.Line, fault.Column));
        Assert.Contains(reason, fault.Reason.ToString(), StringComparison.Ordinal);
        Assert.IsType<FileItem.Measured>(items[0]);
        Assert.IsType<FileItem.Measured>(items[2]);
    }

    [Fact]
    public void A_quotation_mark_that_is_never_closed_costs_one_row()
    {
        var items = Rows(A.Readings("C1,,100,tape,\"open,40,1020,mm,", A.Row(counterH: 200), A.Row(counterH: 300))).ToList();
        Assert.Equal(2, Assert.IsType<FileItem.Unreadable>(items[0]).Line);
        Assert.Equal([3, 4], items.OfType<FileItem.Measured>().Select(m => m.Line));
    }

    [Fact]
    public void Blank_lines_are_passed_over_and_counted()
    {
        var items = Rows(A.File("readings.csv", $"{A.ReadingsHeader}\r\n\r\n{A.Row()}\r\n\r\n\r\nC1,,x,tape,,40,1020,mm,\r\n"))
            .ToList();
        Assert.Equal([3, 6], items.Select(i => i.Line));
    }

    [Theory]
    [InlineData("chain;taken_at;counter_h;tool", "header is not that of")]
    [InlineData("chain\ttaken_at", "header is not that of")]
    [InlineData("name,value", "header is not that of")]
    public void A_header_that_is_none_of_ours_is_refused(string header, string reason)
    {
        var fault = Assert.IsType<FileItem.Unreadable>(Assert.Single(Rows(A.File("something.csv", header + "\n1,2\n"))));
        Assert.Equal(1, fault.Line);
        Assert.Contains(reason, fault.Reason.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Missing_columns_are_named_and_nothing_is_read()
    {
        var faults = Rows(A.File("readings.csv", "chain,tool,pitches,length\nC1,tape,40,1020\n")).Cast<FileItem.Unreadable>()
            .ToList();
        Assert.Equal([(1, "unit"), (1, "taken_at")], faults.Select(f => (f.Line, f.Column)));
    }

    [Fact]
    public void A_column_that_stands_twice_is_refused()
    {
        var fault = Assert.IsType<FileItem.Unreadable>(
            Rows(A.File("events.csv", "chain,event,taken_at,event\nC1,oiling,2026-01-01,oiling\n")).First());
        Assert.Equal((1, "event"), (fault.Line, fault.Column));
    }

    [Fact]
    public void An_unknown_column_is_kept_out_with_a_warning()
    {
        var items = Rows(A.File("events.csv", "chain,colour,event,taken_at\nC1,red,oiling,2026-01-01\n")).ToList();
        Assert.Equal("colour", Assert.IsType<FileItem.Noted>(items[0]).Column);
        Assert.Equal(ChainEventKind.Oiling, Assert.IsType<FileItem.Happened>(items[1]).Event.Kind);
    }

    [Theory]
    [InlineData("C1,washed,2026-01-01,,", "event")]
    [InlineData("C1,oiling,,,", "taken_at")]
    [InlineData("C1,meter_reset,,-4,0", "counter_h_before")]
    [InlineData("C1,meter_reset,,100,none", "counter_h_after")]
    public void What_is_wrong_with_an_event_is_said_with_its_column(string row, string column) =>
        Assert.Equal((2, column), Rows(A.Events(row)).Cast<FileItem.Unreadable>().Select(f => (f.Line, f.Column)).Single());

    [Fact]
    public void The_header_tells_the_kind_even_if_the_file_is_called_otherwise() =>
        Assert.Equal(FileKind.Events, new PlantFile(A.File("readings.csv", $"{A.EventsHeader}\n"), Vienna).Kind);

    private static IEnumerable<FileItem> Rows(ImportFile file) => new PlantFile(file, Vienna).Rows();
}
