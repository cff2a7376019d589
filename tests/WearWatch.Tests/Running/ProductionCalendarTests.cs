using CsCheck;
using WearWatch.Running;

namespace WearWatch.Tests.Running;

public sealed class ProductionCalendarTests
{
    private static readonly TimeZoneInfo Vienna = TimeZoneInfo.FindSystemTimeZoneById("Europe/Vienna");

    private static readonly ProductionCalendar TwoShifts = new(
        [.. new[] { DayOfWeek.Monday, DayOfWeek.Tuesday, DayOfWeek.Wednesday, DayOfWeek.Thursday, DayOfWeek.Friday }
            .SelectMany(d => new[]
            {
                new Shift(d, new TimeOnly(6, 0), TimeSpan.FromHours(8)),
                new Shift(d, new TimeOnly(14, 0), TimeSpan.FromHours(8)),
            })],
        timeZone: Vienna);

    private static DateTimeOffset At(string moment) =>
        DateTimeOffset.Parse(moment, System.Globalization.CultureInfo.InvariantCulture);

    [Fact]
    public void A_line_that_always_runs_makes_every_hour_a_running_hour() =>
        Assert.Equal(48, ProductionCalendar.AlwaysRunning.Between(At("2026-01-01T00:00Z"), At("2026-01-03T00:00Z")).Hours);

    [Fact]
    public void Two_shifts_on_five_days_make_eighty_hours_a_week()
    {
        Assert.Equal(80, TwoShifts.PerWeek.Hours);
        Assert.Equal(80, TwoShifts.Between(At("2026-01-05T00:00+01:00"), At("2026-01-12T00:00+01:00")).Hours);
    }

    [Fact]
    public void Hours_left_on_Friday_evening_end_on_Monday_morning() =>
        Assert.Equal(At("2026-01-12T07:00+01:00"), TwoShifts.After(At("2026-01-09T20:00+01:00"), new RunningHours(3)));

    [Fact]
    public void No_shift_begins_on_a_holiday()
    {
        var calendar = new ProductionCalendar(TwoShifts.Shifts, 1, Vienna, [new DateOnly(2026, 1, 6)]);
        Assert.Equal(64, calendar.Between(At("2026-01-05T00:00+01:00"), At("2026-01-12T00:00+01:00")).Hours);
    }

    [Fact]
    public void A_night_shift_begun_before_a_holiday_runs_to_its_end()
    {
        var nights = new ProductionCalendar(
            [new Shift(DayOfWeek.Monday, new TimeOnly(22, 0), TimeSpan.FromHours(8))], 1, Vienna, [new DateOnly(2026, 1, 6)]);
        Assert.Equal(8, nights.Between(At("2026-01-05T00:00+01:00"), At("2026-01-07T00:00+01:00")).Hours);
    }

    [Fact]
    public void Utilisation_stretches_the_time_that_hours_take()
    {
        var half = new ProductionCalendar([], 0.5);
        Assert.Equal(At("2026-01-02T00:00Z"), half.After(At("2026-01-01T00:00Z"), new RunningHours(12)));
        Assert.Equal(12, half.Between(At("2026-01-01T00:00Z"), At("2026-01-02T00:00Z")).Hours);
    }

    // Europe/Vienna puts the clock on at 02:00 on 29 March 2026: a day of 23 hours (IANA time zone database).
    [Fact]
    public void The_day_on_which_the_clock_goes_on_has_twenty_three_hours() =>
        Assert.Equal(23,
            new ProductionCalendar([], 1, Vienna).Between(At("2026-03-29T00:00+01:00"), At("2026-03-30T00:00+02:00")).Hours, 9);

    // It puts it back at 03:00 on 25 October 2026: a day of 25 hours.
    [Fact]
    public void The_day_on_which_the_clock_goes_back_has_twenty_five_hours() =>
        Assert.Equal(25,
            new ProductionCalendar([], 1, Vienna).Between(At("2026-10-25T00:00+02:00"), At("2026-10-26T00:00+01:00")).Hours, 9);

    [Fact]
    public void Round_the_clock_counts_every_hour_of_a_year_once() =>
        Assert.Equal(365 * 24,
            new ProductionCalendar([], 1, Vienna).Between(At("2026-01-01T00:00+01:00"), At("2027-01-01T00:00+01:00")).Hours, 6);

    [Fact]
    public void Nothing_ahead_is_now() =>
        Assert.Equal(At("2026-01-01T00:00Z"), TwoShifts.After(At("2026-01-01T00:00Z"), RunningHours.Zero));

    [Fact]
    public void Hours_beyond_every_plan_have_no_date() =>
        Assert.Null(TwoShifts.After(At("2026-01-01T00:00Z"), new RunningHours(1e7)));

    [Theory]
    [InlineData(0)]
    [InlineData(-0.1)]
    [InlineData(1.01)]
    [InlineData(double.NaN)]
    public void Utilisation_is_a_share(double utilisation) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new ProductionCalendar([], utilisation));

    [Fact]
    public void Hours_ahead_and_hours_between_agree() =>
        Gen.Select(Gen.Double[0.01, 5000], Gen.Int[0, 525600], Gen.Double[0.05, 1]).Sample((ahead, minute, utilisation) =>
        {
            var calendar = new ProductionCalendar(
                TwoShifts.Shifts, utilisation, Vienna, [new DateOnly(2026, 12, 25), new DateOnly(2026, 5, 1)]);
            var from = At("2026-01-01T00:00Z").AddMinutes(minute);
            var at = calendar.After(from, new RunningHours(ahead))!.Value;
            Assert.Equal(ahead, calendar.Between(from, at).Hours, 6);
        }, iter: 200);

    /// <summary>
    /// Years are counted by whole months; days cut anywhere must come to the same, over night shifts and summer time.
    /// </summary>
    [Fact]
    public void Hours_of_years_are_the_sum_of_their_days() =>
        Gen.Select(Gen.Int[0, 525600], Gen.Int[1, 1200], Gen.Int[0, 86399], Gen.Int[0, 86399]).Sample((minute, days, cut, last) =>
        {
            var calendar = new ProductionCalendar(
                [.. Enum.GetValues<DayOfWeek>().Select(d => new Shift(
                    d, new TimeOnly(cut / 3600, cut / 60 % 60, cut % 60), TimeSpan.FromSeconds(1 + last)))],
                0.7, Vienna, [new DateOnly(2026, 12, 25), new DateOnly(2027, 5, 1)]);
            var from = At("2026-01-01T00:00Z").AddMinutes(minute);
            var sum = Enumerable.Range(0, days).Sum(d => calendar.Between(from.AddDays(d), from.AddDays(d + 1)).Hours);
            Assert.Equal(sum, calendar.Between(from, from.AddDays(days)).Hours, 6);
        }, iter: 200);
}
