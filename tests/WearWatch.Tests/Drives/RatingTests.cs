using System.Globalization;
using WearWatch.Drives;
using WearWatch.Tests.Chains;

namespace WearWatch.Tests.Drives;

public sealed class RatingTests
{
    // Source: docs/references.md [32], tests/data/trade/selection_factors.csv.
    [Fact]
    public void Factors_are_those_of_the_published_tables() => Assert.All(TradeTable.Read("selection_factors.csv"), row =>
    {
        var expected = double.Parse(row["value"], CultureInfo.InvariantCulture);
        var ours = row["factor"] == "strand_factor"
            ? RatingFactors.Strands(int.Parse(row["key1"], CultureInfo.InvariantCulture))
            : RatingFactors.Service(LoadNamed(row["key1"]), MoverNamed(row["key2"]));
        Assert.Equal(expected, ours);
    });

    [Theory]
    [InlineData(0)]
    [InlineData(7)]
    public void The_table_of_strands_ends_at_six(int strands) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => RatingFactors.Strands(strands));

    [Fact]
    public void The_lower_branch_governs_plates_when_slow_and_rollers_when_fast()
    {
        Assert.Equal(ClassicRating.LinkPlateHorsepower(80, 19, 100), ClassicRating.Of(80, 19, 100).Horsepower, 1e-9);
        Assert.Equal(ClassicRating.RollerHorsepower(80, 19, 3000), ClassicRating.Of(80, 19, 3000).Horsepower, 1e-9);
    }

    // Source: docs/references.md [33]: the light chain has its own constants, 0.0022 against 0.004 and 3.4 against 17.
    [Fact]
    public void The_light_chain_has_its_own_constants()
    {
        Assert.Equal(0.0022 / 0.004,
            ClassicRating.LinkPlateHorsepower(41, 17, 500) / ClassicRating.LinkPlateHorsepower(40, 17, 500), 1e-12);
        Assert.Equal(3.4 / 17, ClassicRating.RollerHorsepower(41, 17, 500) / ClassicRating.RollerHorsepower(40, 17, 500), 1e-12);
    }

    [Fact]
    public void Figures_say_of_which_generation_they_are() =>
        Assert.Contains("classic", ClassicRating.Generation.ToString(), StringComparison.Ordinal);

    private static LoadKind LoadNamed(string name) => name switch
    {
        "smooth" => LoadKind.Smooth,
        "some impact" => LoadKind.SomeImpact,
        "high impact" => LoadKind.HighImpact,
        _ => throw new ArgumentOutOfRangeException(nameof(name), name, null),
    };

    private static PrimeMover MoverNamed(string name) => name switch
    {
        "electric motor or turbine" => PrimeMover.MotorOrTurbine,
        "internal combustion, hydraulic drive" => PrimeMover.EngineHydraulic,
        "internal combustion, mechanical drive" => PrimeMover.EngineMechanical,
        _ => throw new ArgumentOutOfRangeException(nameof(name), name, null),
    };
}
