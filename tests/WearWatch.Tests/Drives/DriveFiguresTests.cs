using CsCheck;
using WearWatch.Chains;
using WearWatch.Drives;
using WearWatch.Lubrication;
using WearWatch.Units;

namespace WearWatch.Tests.Drives;

public sealed class DriveFiguresTests
{
    /// <summary>16B-1, 19 and 57 teeth, 120 pitches, 300 rpm, 5 kN.</summary>
    private static readonly ChainDrive Ordinary = new ChainDrive
    {
        PitchMm = 25.4,
        Teeth = 19,
        DrivenTeeth = 57,
        Rpm = 300,
        Power = new Power(5000 * 19 * 300 * 25.4 / 60_000),
        Pitches = 120,
        KilogramsPerMetre = 2.7,
    }.With(ChainCatalogue.Find("16B-1")!);

    // Computed by hand from the published geometry: 2,850 loops an hour, 5.20 m/h of slip; pressure over 210.7 mm2 (area from
    // memory).
    [Fact]
    public void An_ordinary_drive_comes_out_as_computed_by_hand()
    {
        var figures = Worked(Ordinary with { KilogramsPerMetre = null });

        Assert.Equal(5000, figures.Pull.Newtons, 1e-6);
        Assert.Equal(2850, figures.LoopsPerHour, 1e-9);
        Assert.Equal(11_400, figures.ArticulationsPerHour, 1e-9);
        Assert.Equal(5.20, figures.LoadedSlipMetresPerHour!.Value, 5e-3);
        Assert.Equal(23.7, figures.BearingPressureNewtonsPerMm2!.Value, 0.05);
        Assert.Equal(12, figures.SafetyFactor!.Value, 1e-9);
        Assert.Equal(1.37, figures.SpeedVariationPercent, 5e-3);
    }

    [Fact]
    public void The_chains_own_mass_adds_to_the_pull_with_the_square_of_the_speed()
    {
        var figures = Worked(Ordinary);

        Assert.Equal(2.7 * 2.413 * 2.413, figures.CentrifugalPull!.Value.Newtons, 1e-6);
        Assert.Equal(60_000 / (5000 + 2.7 * 2.413 * 2.413), figures.SafetyFactor!.Value, 1e-6);
    }

    // Common practice, no source: 50 to 60 links a minute at 76 m an hour are pitches of 21.1 to 25.3 mm; 25.4 mm runs just below
    // 50.
    [Fact]
    public void Fifty_to_sixty_links_a_minute_at_76_metres_an_hour_tell_the_pitch()
    {
        var speed = Speed.FromMetresPerHour(76);

        Assert.Equal(25.3, LinkRate.PitchMm(speed, 50), 0.05);
        Assert.Equal(21.1, LinkRate.PitchMm(speed, 60), 0.05);
        Assert.Equal(49.87, LinkRate.LinksPerMinute(speed, 25.4), 0.005);
    }

    // Source: docs/references.md [43]: a sixth at most in service; a drive is laid out for a seventh (common practice). 60 kN.
    [Theory]
    [InlineData(8.5, false, false)]
    [InlineData(9.0, true, false)]
    [InlineData(10.1, true, true)]
    public void A_pull_above_a_seventh_is_warned_of_and_above_a_sixth_refused(double pullKn, bool warned, bool refused)
    {
        var outcome = DriveFigures.Of(Ordinary with
        {
            Power = new Power(1000 * pullKn * 19 * 300 * 25.4 / 60_000),
            TensileKilonewtons = 60,
        });
        Assert.Equal(refused, outcome is DriveOutcome.Refused { Field: "power" });
        if (outcome is DriveOutcome.Worked worked) Assert.Equal(warned, !worked.Figures.PullWarning.IsEmpty);
    }

    // By hand: two bends at each of two sprockets and two idlers in every loop.
    [Fact]
    public void Idlers_and_third_shafts_count_in_articulations()
    {
        double Bends(int idlers) => Assert.IsType<DriveOutcome.Worked>(
            DriveFigures.Of(Ordinary with { Idlers = idlers })).Figures.ArticulationsPerHour;

        Assert.Equal(2 * Bends(0), Bends(2), 1e-9);
    }

    // By hand: 1,000 kg at 0.2 pull 1.961 kN; a seventh of 112 kN is 16 kN.
    [Fact]
    public void Relative_load_is_computed_or_not_known()
    {
        Assert.Equal(0.1226, RelativeLoad.OfConveyor(1000, 0.2, 112).Share!.Value, 1e-4);
        Assert.Null(RelativeLoad.OfConveyor(1000, 0.2, null).Share);
        Assert.Equal(0.5, RelativeLoad.OfDrive(new Power(5000), new Power(10_000)).Share);
        Assert.Null(RelativeLoad.OfDrive(new Power(5000), null).Share);
    }

    // As below, the pull would be 14.1 MN.
    [Fact]
    public void Four_hundred_horsepower_at_76_metres_an_hour_are_refused_as_impossible()
    {
        var drive = Ordinary with { Power = Power.FromHorsepower(400), Rpm = 76_000.0 / 60 / (19 * 25.4) };
        var refused = Assert.IsType<DriveOutcome.Refused>(DriveFigures.Of(drive));

        Assert.Equal("power", refused.Field);
        Assert.Contains("14129", refused.Reason.ToString(), StringComparison.Ordinal);
    }

    // Common practice, classic formulas [33] and strand factors [32]: No. 160 triple, 21 teeth, 400 rpm.
    [Fact]
    public void A_multi_strand_chain_for_four_hundred_horsepower_is_found_by_the_classic_rating()
    {
        var options = SelectedChain.For(Power.FromHorsepower(400), teeth: 21, rpm: 400);
        var chosen = Assert.Single(options, o => o.Type.Designation == "160-3");

        Assert.Equal(427, chosen.Rated.Horsepower, 1.0);
        Assert.Equal(7.11, chosen.Speed.MetresPerSecond, 5e-3);
        Assert.Equal(41.9, chosen.Pull.Kilonewtons, 0.1);
        Assert.Equal(OilFeedKind.OilStream, chosen.OilFeed.Kind);
        // The same account says that six strands of No. 80 or 100 do not reach it.
        Assert.DoesNotContain(options, o =>
            o.Type.Designation.StartsWith("80-", StringComparison.Ordinal)
            || o.Type.Designation.StartsWith("100-", StringComparison.Ordinal));
    }

    // Common practice, as above: with service factor 1.3, 520 hp are wanted: No. 160 quadruple (564 hp).
    [Fact]
    public void A_service_factor_asks_for_more_strands()
    {
        var service = RatingFactors.Service(LoadKind.SomeImpact, PrimeMover.MotorOrTurbine);
        var options = SelectedChain.For(Power.FromHorsepower(400), 21, 400, service);
        var chosen = Assert.Single(options, o => o.Type.PitchMm!.Value.Value == 50.8);

        Assert.Equal("160-4", chosen.Type.Designation);
        Assert.Equal(564, chosen.Rated.Horsepower, 1.0);
    }

    [Fact]
    public void Centre_distance_and_length_are_each_others_inverse() =>
        Gen.Select(Gen.Int[9, 60], Gen.Int[9, 150], Gen.Double[50, 300]).Sample((teeth, driven, centre) =>
            Math.Abs(
                ChainLoop.CentrePitches(teeth, driven, ChainLoop.LengthPitches(teeth, driven, centre))!.Value - centre) < 1e-6);

    [Theory]
    [InlineData(143.2, 144)]
    [InlineData(142.0, 142)]
    [InlineData(141.0, 142)]
    public void A_length_is_made_even_upwards(double length, int even) => Assert.Equal(even, ChainLoop.EvenPitches(length));

    [Fact]
    public void Power_that_a_chain_can_carry_is_pull_times_speed() =>
        Gen.Select(Gen.Int[9, 60], Gen.Double[10, 2000], Gen.Double[0.1, 5]).Sample((teeth, rpm, kilonewtons) =>
        {
            var speed = teeth * rpm * 25.4 / 60_000;
            var figures = Worked(Ordinary with { Teeth = teeth, Rpm = rpm, Power = new Power(1000 * kilonewtons * speed) });
            return Math.Abs(figures.Pull.Kilonewtons - kilonewtons) < 1e-9 * kilonewtons + 1e-12;
        });

    [Theory]
    [InlineData(0, 19, 57, 300, 120, "pitch_mm")]
    [InlineData(25.4, 4, 57, 300, 120, "teeth")]
    [InlineData(25.4, 19, 57, 0, 120, "rpm")]
    [InlineData(25.4, 19, 57, 300, 40, "pitches")]
    [InlineData(25.4, 19, 57, 300, 62, "pitches")]
    public void A_drive_that_cannot_be_is_refused_by_field(double pitchMm, int teeth, int driven, double rpm, int pitches,
        string field)
    {
        var drive = Ordinary with { PitchMm = pitchMm, Teeth = teeth, DrivenTeeth = driven, Rpm = rpm, Pitches = pitches };

        Assert.Equal(field, Assert.IsType<DriveOutcome.Refused>(DriveFigures.Of(drive)).Field);
    }

    private static DriveFigures Worked(ChainDrive drive) => Assert.IsType<DriveOutcome.Worked>(DriveFigures.Of(drive)).Figures;
}
