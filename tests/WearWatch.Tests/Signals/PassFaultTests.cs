using WearWatch.Benchmarks.Passes;

namespace WearWatch.Tests.Signals;

/// <summary>The kinds of days of the benchmark "passes", few of each; 200 of each are in docs/signals.md.</summary>
public sealed class PassFaultTests(ITestOutputHelper output)
{
    private const int Runs = 5;

    /// <summary>By chance so many days of five miss a bar that 200 keep.</summary>
    private const double Slack = 1;

    public static TheoryData<string> Days => [.. PassScenarios.All.Select(s => s.Name)];

    [Theory]
    [MemberData(nameof(Days))]
    public void Each_kind_of_day_makes_a_right_reading_or_none_as_it_should(string name)
    {
        var scenario = PassScenarios.All.Single(s => s.Name == name);
        var score = PassTrial.Of(scenario, Runs, 1);
        output.WriteLine($"{name}: {score} {string.Join(", ", score.Refused)}");
        Assert.True(score.IsReached(scenario, Slack), score.ToString());
    }

    [Fact]
    public void A_sensor_that_creeps_by_a_tenth_of_a_millimetre_a_day_is_found_within_twenty_days_and_sound_days_are_believed()
    {
        var creep = PassTrial.Days(PassCourses.Creep(0.1), 20, 4, 1);
        Assert.All(creep, refused => Assert.Equal(19, refused[^1]));
        var sound = PassTrial.Days(_ => _ => 0, 20, 4, 1);
        output.WriteLine(string.Join("; ", creep.Concat(sound).Select(r => string.Join(",", r))));
        Assert.InRange(sound.Sum(refused => refused.Count), 0, 1);
    }

    [Fact]
    public void A_sensor_that_was_moved_overnight_by_half_a_millimetre_is_found_either_way()
    {
        const int days = PassCourses.MoveDay + 1;
        Assert.All(PassTrial.Days(PassCourses.Overnight(0.5, PassCourses.MoveDay), days, 6, 1),
            refused => Assert.Equal([days - 1], refused));
    }
}
