using System.Globalization;
using WearWatch.SensorSim.Measuring;
using WearWatch.SensorSim.Plant;
using WearWatch.SensorSim.Randomness;

namespace WearWatch.SensorSim.Tests.Measuring;

public sealed class MeasuringHabitTests
{
    private static MeasuringHabit Caliper { get; } = new()
    {
        Tool = Tool.Caliper,
        InInches = false,
        Pitches = 24,
        Places = [""],
        WearShares = [1],
        IntervalDays = 28,
        TellsTemperature = true,
    };

    // Oracle: 24 pitches of 12.7 mm are 304.8 mm; 2 % more are 310.896 mm; 40 K of 11.5e-6 are 0.143 mm. Of 4,000 readings with
    // 0.11 mm and 1 % of 2 % (0.061 mm) the mean has a standard error of 0.002 mm and the scatter one of 1.1 %; four are allowed.
    [Fact]
    public void A_caliper_reads_the_worn_and_warm_length_with_its_scatter()
    {
        var lengths = Lengths(2, 60, Slip.None);

        Assert.InRange(lengths.Average(), 311.039 - 0.009, 311.039 + 0.009);
        Assert.InRange(Math.Sqrt(lengths.Average(l => (l - 311.039) * (l - 311.039))), 0.120, 0.132);
    }

    // Oracle: 25 or 23 pitches of 12.7 mm.
    [Theory]
    [InlineData(Slip.OnePitchTooMany, 317.5)]
    [InlineData(Slip.OnePitchTooFew, 292.1)]
    public void A_wrong_count_adds_or_leaves_out_a_pitch(Slip slip, double lengthMm) =>
        Assert.InRange(Lengths(0, 20, slip).Average(), lengthMm - 0.01, lengthMm + 0.01);

    [Fact]
    public void Sensors_make_no_slips()
    {
        var (sensor, chance) = (Caliper with { Tool = Tool.Sensor }, Chance.For(1, "slips"));
        Assert.All(Enumerable.Range(0, 1_000), _ => Assert.Equal(Slip.None, sensor.DrawSlip(chance)));
    }

    [Fact]
    public void Every_position_is_measured_over_an_even_number_of_pitches_that_the_tool_can_span()
    {
        foreach (var position in Mill.Lines.SelectMany(l => l.Positions))
        {
            var habit = MeasuringHabit.At(position, 28, Chance.For(3, position.ChainName));
            var length = habit.Pitches * position.Size.PitchMm;

            Assert.Equal(0, habit.Pitches % 2);
            Assert.True(habit.Pitches <= position.Pitches / 2);
            if (habit.Tool == Tool.Caliper) Assert.InRange(length, 200, 500);
            else Assert.InRange(length, 500, 2_100);
        }
    }

    [Fact]
    public void One_of_the_places_is_the_worst_and_the_others_wear_less()
    {
        foreach (var position in Mill.Lines.SelectMany(l => l.Positions))
        {
            var habit = MeasuringHabit.At(position, 28, Chance.For(3, position.ChainName));
            Assert.Single(habit.WearShares, share => share == 1);
            Assert.Equal(habit.Places.Count, habit.WearShares.Count);
            if (position.Size.Family == MillFamily.Roller) Assert.Single(habit.Places);
        }
    }

    private static List<double> Lengths(double elongationPercent, double temperatureC, Slip slip)
    {
        var chance = Chance.For(7, "caliper");
        return [.. Enumerable.Range(0, 4_000).Select(_ => double.Parse(
            Caliper.Measure(12.7, elongationPercent, temperatureC, slip, chance).Told.Text, CultureInfo.InvariantCulture))];
    }
}
