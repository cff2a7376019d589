using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Lubrication;

namespace WearWatch.Tests.Lubrication;

/// <summary>Oil by family, temperature and place: what the sources cover, and silence where they do not.</summary>
public sealed class OilPlaceTests
{
    [Theory]
    [InlineData(OilPlace.ExplosiveAtmosphere, ChainMaterial.Steel, "flash point")]
    [InlineData(OilPlace.DryFilm, ChainMaterial.Steel, "dry film")]
    [InlineData(OilPlace.Ordinary, ChainMaterial.Plastic, "not oiled")]
    public void Where_no_table_covers_the_place_no_grade_and_no_amount_are_said(
        OilPlace place, ChainMaterial material, string says)
    {
        var advice = OilAdvice.For(Card("roller", 0.5) with { OilPlace = place, Material = material });

        Assert.Null(advice.Grade);
        Assert.Null(advice.Amount);
        Assert.Null(advice.Feed);
        Assert.Contains(says, Assert.Single(advice.Cautions).Words.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Food_keeps_the_viscosity_and_asks_for_a_registered_lubricant()
    {
        var advice = OilAdvice.For(Card("roller", 0.5) with { OilPlace = OilPlace.Food });

        Assert.Equal("SAE 30", advice.Grade!.Sae);
        Assert.Contains("H1", Assert.Single(advice.Cautions).Words.ToString(), StringComparison.Ordinal);
    }

    // Source: docs/references.md [12]: C2080 has the joints of No. 80, 170 ft/min by hand, not those of No. 160, 100 ft/min.
    [Fact]
    public void A_double_pitch_chain_is_oiled_as_its_base_chain() =>
        Assert.Equal(0.8636, OilFeed.For(ChainFamily.Named("double_pitch"), 50.8, new(0.6)).ManualUpTo.MetresPerSecond, 1e-4);

    // Source: docs/references.md [49]: conveyor chain by hand up to 0.5 m/s.
    [Theory]
    [InlineData(0.4, false)]
    [InlineData(0.8, true)]
    public void A_conveyor_is_oiled_by_hand_only_when_it_is_slow(double metresPerSecond, bool warned)
    {
        var card = Card("conveyor", metresPerSecond) with { PitchMm = 40, OilMethod = OilMethod.Hand };
        Assert.Equal(warned, OilAdvice.For(card).Warning is not null);
    }

    // [13] for all sizes: SAE 30 at 20 degrees; [11] by size: SAE 20 for small chains and SAE 40 for large ones.
    [Theory]
    [InlineData(12.7, "SAE 20")]
    [InlineData(50.8, "SAE 40")]
    public void What_another_maker_says_for_the_size_is_told_beside(double pitchMm, string sae) => Assert.Contains(
        sae, OilAdvice.For(Card("roller", 0.3) with { PitchMm = pitchMm }).Grade!.Remark.ToString(), StringComparison.Ordinal);

    // Source: docs/references.md [13]: 8 h are those of roller drives. Slow chains once a running week: common practice.
    [Theory]
    [InlineData("roller", null, 8, OilingTask.OilByHand)]
    [InlineData("conveyor", null, 168, OilingTask.OilByHand)]
    [InlineData("roller", OilMethod.Lubricator, 168, OilingTask.CheckOiler)]
    [InlineData("conveyor", OilMethod.Drip, 168, OilingTask.CheckOiler)]
    public void Intervals_differ_by_family_and_method(string family, OilMethod? method, double hours, OilingTask task)
    {
        var plan = OilingPlan.For(Card(family, 0.3) with { OilMethod = method }, OilTerms.Default, isFirst: false);

        Assert.Equal((hours, task), (plan.IntervalHours, plan.Task));
    }

    private static ChainCard Card(string family, double metresPerSecond) => new()
    {
        Name = "K",
        PitchMm = 25.4,
        Family = ChainFamily.Named(family),
        Duty = new Duty { SpeedMetresPerSecond = metresPerSecond, AmbientC = 20, Lubrication = LubricationState.Manual },
    };
}
