using WearWatch.Chains;
using WearWatch.Drives;
using WearWatch.Units;

namespace WearWatch.Tests.Drives;

public sealed class ExpectedWearTests
{
    // Source: docs/references.md [44]: 15,000 h to 3 % with 19 teeth and 120 pitches at rated load; and the classic rating [33].
    [Fact]
    public void A_drive_at_its_rated_load_lasts_about_the_common_life_basis()
    {
        var rate = Rate(ClassicRating.Of(80, 19, 300));

        Assert.Equal(3.0 / 15, rate, 0.01);
    }

    // Archard's law [18]: as load and slip, against the length of the loop.
    [Fact]
    public void The_rate_goes_with_pull_and_falls_with_the_length_of_the_loop()
    {
        var rate = Rate(Power.FromKilowatts(6));

        Assert.Equal(2 * rate, Rate(Power.FromKilowatts(12)), 1e-9);
        Assert.Equal(rate / 2, Rate(Power.FromKilowatts(6), pitches: 240), 1e-9);
    }

    [Fact]
    public void The_prior_is_wide_and_wider_where_oil_is_poor_or_unknown()
    {
        var figures = Figures(Power.FromKilowatts(12), 120);
        var kept = ExpectedWear.Prior(figures, 25.4, LubricationState.Auto)!;
        var unknown = ExpectedWear.Prior(figures, 25.4, null)!;

        Assert.True(Math.Sqrt(kept.VarianceLogRate) >= Math.Log(2), "Two like drives differ by a factor of two.");
        Assert.True(unknown.VarianceLogRate > kept.VarianceLogRate);
        Assert.Equal(ExpectedWear.PercentPer1000Hours(figures, 25.4)!.Value, Math.Exp(kept.MeanLogRate), 1e-12);
        Assert.Contains("Archard", kept.Source.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_pin_and_area_nothing_is_expected()
    {
        var figures = Figures(Power.FromKilowatts(12), 120) with { LoadedSlipMetresPerHour = null };

        Assert.Null(ExpectedWear.Prior(figures, 25.4, LubricationState.Auto));
    }

    private static double Rate(Power power, int pitches = 120) =>
        ExpectedWear.PercentPer1000Hours(Figures(power, pitches), 25.4)!.Value;

    private static DriveFigures Figures(Power power, int pitches)
    {
        var drive = new ChainDrive { PitchMm = 25.4, Teeth = 19, DrivenTeeth = 57, Rpm = 300, Power = power, Pitches = pitches };
        return Assert.IsType<DriveOutcome.Worked>(DriveFigures.Of(drive.With(ChainCatalogue.Find("16B-1")!))).Figures;
    }
}
