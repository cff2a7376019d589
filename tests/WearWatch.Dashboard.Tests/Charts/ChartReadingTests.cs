using WearWatch.Dashboard.Kit.Charts;

namespace WearWatch.Dashboard.Tests.Charts;

/// <summary>Dates, parts and figures of a chain's wear chart.</summary>
public sealed class ChartReadingTests
{
    private static readonly DateTimeOffset Start = new(2026, 1, 1, 0, 0, 0, TimeSpan.Zero);

    // 100 h a week for 10 weeks, then 50 h a week.
    private static readonly HourDates Days =
        new([(0, Start), (1000, Start.AddDays(70)), (1500, Start.AddDays(140)), (1200, Start)]);

    [Fact]
    public void Between_two_readings_hours_and_days_go_evenly_and_beyond_them_nothing_is_said()
    {
        Assert.Equal(Start.AddDays(35), Days.At(500));
        Assert.Equal(Start.AddDays(105), Days.At(1250));
        Assert.Equal(1250, Days.HoursAt(Start.AddDays(105))!.Value, 9);
        Assert.Null(Days.At(-1));
        Assert.Null(Days.At(1501));
        Assert.Null(Days.HoursAt(Start.AddDays(141)));
        Assert.True(new HourDates([(0, Start)]).IsEmpty);
    }

    [Fact]
    public void Ticks_are_firsts_of_months_as_many_as_there_is_room_for()
    {
        var (months, years) = Days.TicksOf(0, 1500, 7);
        Assert.False(years);
        Assert.Equal(["01-01", "02-01", "03-01", "04-01", "05-01"],
            months.Select(m => m.Day.ToString("MM-dd", System.Globalization.CultureInfo.InvariantCulture)));
        Assert.Equal(1000.0 * 31 / 70, months[1].Hours, 9);
        Assert.Equal([1, 3, 5], Days.TicksOf(0, 1500, 3).Ticks.Select(m => m.Day.Month));
        Assert.Empty(new HourDates([]).TicksOf(0, 10, 7).Ticks);
    }

    [Fact]
    public void What_is_read_off_is_the_belief_before_the_last_reading_and_the_forecast_after_it()
    {
        var picture = Picture();
        Assert.Equal(new ReadOff(500, 0.5, null, null), ReadOff.Of(picture, 500));
        var ahead = ReadOff.Of(picture, 1500)!;
        Assert.Equal(1.5, ahead.Percent, 9);
        Assert.True(ahead.LowPercent < 1.5 && ahead.HighPercent > 1.5);
        Assert.Null(ReadOff.Of(picture, 99_999));
    }

    [Fact]
    public void A_part_fills_the_chart_with_what_lies_in_it()
    {
        var plan = new WearChartPlan(Picture(), 860, 380, 12, new ChartStretch(400, 600));
        Assert.Equal((400, 600), (plan.Hours.From, plan.Hours.To));
        Assert.InRange(plan.Percent.From, 0.2, 0.4);
        Assert.InRange(plan.Percent.To, 0.6, 0.9);
    }

    [Theory]
    [InlineData("?from=400&to=600.5&axis=dates", 400.0, 600.5, true)]
    [InlineData("?from=400", 400.0, null, false)]
    [InlineData("?from=600&to=400&axis=dates", null, null, true)]
    [InlineData("?from=-4&to=x", null, null, false)]
    public void A_part_stands_in_the_address(string query, double? from, double? to, bool dates)
    {
        var stretch = ChartStretch.FromQuery(query);
        Assert.Equal(new ChartStretch(from, to, dates), stretch);
        Assert.Equal(stretch, ChartStretch.FromQuery(stretch.ToQuery()));
    }

    private static WearPicture Picture() => new()
    {
        Readings = [new(0, 0, 0.05, false, ""), new(500, 0.5, 0.05, false, ""), new(1000, 1, 0.05, false, "")],
        Track = [new(0, 0), new(500, 0.5), new(1000, 1)],
        Levels =
        [
            new(0.9, 1000, 1000, 1000, 1000, 1000), new(1, 1000, 1000, 1000, 1000, 1000), new(3, 2000, 2500, 3000, 3500, 5000),
        ],
        LimitPercent = 3,
        NowH = 1000,
        Days = Days,
    };
}
