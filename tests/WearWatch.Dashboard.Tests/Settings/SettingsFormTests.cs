using WearWatch.Dashboard.Administration.Settings;
using WearWatch.Plant.Settings;
using WearWatch.Running;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Tests.Settings;

public sealed class SettingsFormTests
{
    [Theory]
    [InlineData("06:00-14:00, 14:00-22:00", 2, 16)]
    [InlineData("22:00-06:00", 1, 8)]
    [InlineData("0:00-24:00", 1, 24)]
    [InlineData("06:00-06:00", 1, 24)]
    [InlineData("", 0, 0)]
    public void Shifts_are_read_as_people_write_them(string text, int count, double hours)
    {
        var shifts = ShiftText.Read(DayOfWeek.Monday, text)!;
        Assert.Equal((count, hours), (shifts.Count, shifts.Sum(s => s.Length.TotalHours)));
    }

    [Theory]
    [InlineData("6-14")]
    [InlineData("06:00")]
    [InlineData("25:00-26:00")]
    [InlineData("06:00-14:00-15:00")]
    public void What_is_no_shift_is_refused(string text) => Assert.Null(ShiftText.Read(DayOfWeek.Monday, text));

    [Theory]
    [InlineData("06:00-14:00, 22:00-06:00")]
    [InlineData("00:00-24:00")]
    public void Shifts_survive_being_written(string text)
    {
        var shifts = ShiftText.Read(DayOfWeek.Friday, text)!;
        Assert.Equal(text, ShiftText.Write(shifts));
    }

    [Fact]
    public void Overlaps_are_found_over_midnight_and_over_the_end_of_the_week()
    {
        static Shift At(DayOfWeek day, int hour, int hours) => new(day, new TimeOnly(hour, 0), TimeSpan.FromHours(hours));
        Assert.False(ShiftText.Overlap([At(DayOfWeek.Monday, 22, 8), At(DayOfWeek.Tuesday, 6, 8)]));
        Assert.True(ShiftText.Overlap([At(DayOfWeek.Monday, 22, 9), At(DayOfWeek.Tuesday, 6, 8)]));
        Assert.True(ShiftText.Overlap([At(DayOfWeek.Saturday, 22, 9), At(DayOfWeek.Sunday, 6, 8)]));
    }

    [Fact]
    public void Settings_survive_being_shown_and_saved()
    {
        var plant = new PlantRow
        {
            Name = "Mill",
            TimeZone = "Europe/Vienna",
            Utilisation = 0.85,
            Holidays = ShiftPlan.Text([new DateOnly(2026, 12, 25)]),
            Shifts = ShiftPlan.Text([new Shift(DayOfWeek.Monday, new TimeOnly(6, 0), TimeSpan.FromHours(16))]),
        };
        var form = SettingsForm.Of(plant);
        Assert.Equal(("85", false, "06:00-22:00", "2026-12-25"),
            (form.UtilisationPercent, form.RoundTheClock, form.Days[0].Shifts, form.Holidays));
        var saved = new PlantRow { Name = "", TimeZone = "" };
        Assert.Empty(form.Read(out var change));
        change(saved);
        Assert.Equal((plant.Name, plant.TimeZone, plant.Utilisation, plant.Shifts, plant.Holidays),
            (saved.Name, saved.TimeZone, saved.Utilisation, saved.Shifts, saved.Holidays));
    }

    [Fact]
    public void Every_slip_is_told_at_its_field()
    {
        var form = SettingsForm.Of(new PlantRow { Name = "Mill", TimeZone = "UTC" });
        (form.Name, form.TimeZone, form.UtilisationPercent, form.RoundTheClock, form.Holidays) =
            (" ", "Mars/Base", "130", false, "Christmas");
        form.Days[1].Shifts = "all day";
        Assert.Equal(["Tuesday", "holidays", "name", "utilisation", "zone"], form.Read(out _).Keys.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_plant_that_never_runs_is_refused()
    {
        var form = SettingsForm.Of(new PlantRow { Name = "Mill", TimeZone = "UTC" });
        form.RoundTheClock = false;
        Assert.Equal(["shifts"], form.Read(out _).Keys);
    }
}
