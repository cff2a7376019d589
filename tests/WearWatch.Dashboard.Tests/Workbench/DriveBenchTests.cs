using WearWatch.Dashboard.Engineer.Workbench.Drives;
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Plant.Bench;
using WearWatch.Units;

namespace WearWatch.Dashboard.Tests.Workbench;

public sealed class DriveBenchTests
{
    private const string Fan = "type=16A-1&teeth=19&driven_teeth=57&rpm=300&power=12 kW&centre=1000";

    // Common practice, no source: 400 hp at 21 teeth and 400 rpm takes a No. 160 triple, about 427 hp, oil stream.
    [Fact]
    public void Four_hundred_horsepower_take_a_number_160_triple()
    {
        var worked = Bench.Drive("type=160-3&teeth=21&driven_teeth=63&rpm=400&power=400 hp&pitches=120");
        Assert.Equal(427, worked.Rating.Rated!.Value.Horsepower, 0.5);
        Assert.True(worked.Rating.IsEnough);
        Assert.Contains("oil stream", DriveView.Of(worked, UnitPreference.Si).Feed, StringComparison.OrdinalIgnoreCase);
        Assert.Contains(worked.Alternatives, c => c.Type.Designation == "160-3");
    }

    // Common practice, no source: 400 hp at 76 m/h are figures of two different machines.
    [Fact]
    public void A_power_that_no_chain_stands_is_refused_in_words()
    {
        var refused = Assert.IsType<BenchAnswer<DriveCalculation>.Refused>(
            DriveBench.Answer(Bench.Ask("type=M112x160&teeth=8&driven_teeth=8&speed=76 m/h&power=400 hp&centre=24000")));
        var reason = Assert.Single(refused.Refusals);
        Assert.Equal("power", reason.Field);
        Assert.Contains("two different machines", reason.Reason.ToString(), StringComparison.Ordinal);
    }

    // Source: docs/references.md [35]: L = 2 C + (z1 + z2)/2 + (z2 - z1)^2/(4 pi^2 C), here 117.67; the next even number is 118.
    [Fact]
    public void A_centre_distance_becomes_an_even_length_and_back()
    {
        var worked = Bench.Drive(Fan);
        Assert.Equal(117.67, worked.ExactPitches!.Value, 0.005);
        Assert.Equal(118, worked.Drive.Pitches);
        var back = Bench.Drive(FormattableString.Invariant(
            $"{Fan.Replace("&centre=1000", "", StringComparison.Ordinal)}&centre={worked.Figures.CentreDistanceMm - 1e-6:R}"));
        Assert.Equal(118, back.ExactPitches!.Value, 1e-4);
    }

    [Fact]
    public void Speed_and_turns_say_the_same()
    {
        var bySpeed = Bench.Drive("type=16A-1&teeth=19&driven_teeth=57&speed=2.413 m/s&power=12&pitches=118");
        Assert.Equal(300, bySpeed.Drive.Rpm, 1e-9);
        Assert.Equal(2.413, bySpeed.Figures.Speed.MetresPerSecond, 1e-12);
    }

    // Source: docs/references.md [44]: the common life basis is 3 % in 15,000 h, about 0.2 % per 1,000 h, and nobody knows better
    // than a factor of some.
    [Fact]
    public void Wear_is_expected_with_its_width()
    {
        var rate = Bench.Drive(Fan + "&lubrication=auto").ExpectedRate!.Value;
        Assert.InRange(rate.Middle, 0.1, 0.4);
        Assert.InRange(rate.Fast / rate.Slow, 10, 20);
        var poor = Bench.Drive(Fan + "&lubrication=poor").ExpectedRate!.Value;
        Assert.True(poor.Fast / poor.Slow > rate.Fast / rate.Slow);
    }

    [Fact]
    public void A_b_chain_is_rated_as_the_a_chain_of_its_pitch_and_that_is_said()
    {
        Assert.NotNull(Bench.Drive(Fan).Rating.Rated);
        var european = Bench.Drive(Fan.Replace("16A-1", "16B-1", StringComparison.Ordinal));
        Assert.Equal(Bench.Drive(Fan).Rating.Rated, european.Rating.Rated);
        Assert.Contains("A chain of the same pitch", european.Rating.Basis.ToString(), StringComparison.Ordinal);
    }

    // Source: docs/references.md [32]: some impact and an electric motor, 1.3.
    [Fact]
    public void An_uneven_load_asks_for_more()
    {
        var rating = Bench.Drive(Fan + "&load=some_impact").Rating;
        Assert.Equal(1.3, rating.ServiceFactor);
        Assert.Equal(15.6, rating.Asked.Kilowatts, 1e-9);
    }

    [Fact]
    public void Values_from_memory_are_named() =>
        Assert.Contains("bearing area", DriveView.Of(Bench.Drive(Fan), UnitPreference.Si).FromMemory, StringComparison.Ordinal);

    [Fact]
    public void An_odd_length_is_warned_of() => Assert.Contains(
        "offset link", DriveView.Of(
            Bench.Drive("type=16A-1&teeth=19&driven_teeth=57&rpm=300&power=12&pitches=119"),
                UnitPreference.Si).Geometry[0].Note.ToString(),
        StringComparison.Ordinal);

    [Fact]
    public void The_page_writes_in_a_persons_units()
    {
        var view = DriveView.Of(
            Bench.Drive(Fan), new UnitPreference(LengthUnit.Inch, Horsepower: true, FeetPerMinute: true, Fahrenheit: true));
        Assert.Contains(view.Geometry, f => f.Value.ToString() == "39.5374 in");
        Assert.Contains(view.Motion, f => f.Value.ToString() == "475 ft/min");
        Assert.Contains(view.Load, f => f.Note.ToString().StartsWith("16.09 hp", StringComparison.Ordinal));
    }

    [Fact]
    public void What_is_wanted_is_asked_for() => Assert.Equal(
        ["pitch_mm", "teeth", "driven_teeth", "power", "rpm", "pitches"],
        Bench.Refused(DriveBench.Answer(Bench.Ask("load=smooth"))));
}
