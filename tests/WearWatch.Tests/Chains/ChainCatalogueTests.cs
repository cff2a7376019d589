using System.Globalization;
using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Units;

namespace WearWatch.Tests.Chains;

public sealed class ChainCatalogueTests
{
    // Sources: [26] for the ISO sizes, [5] for the ASME ones, [25] for double pitch and leaf chain; M, WH and round-link sizes
    // from memory.
    [Theory]
    [InlineData("16B-2", "16B-2", "roller", 25.4, 2)]
    [InlineData("16b", "16B-1", "roller", 25.4, 1)]
    [InlineData("ISO 606 08A-3", "08A-3", "roller", 12.7, 3)]
    [InlineData("DIN 8187 - 10B-1", "10B-1", "roller", 15.875, 1)]
    [InlineData("80", "80-1", "roller", 25.4, 1)]
    [InlineData("80-2", "80-2", "roller", 25.4, 2)]
    [InlineData("#80", "80-1", "roller", 25.4, 1)]
    [InlineData("ANSI No. 60H", "60H-1", "roller", 19.05, 1)]
    [InlineData("35", "35-1", "bush", 9.525, 1)]
    [InlineData("C2060", "212A", "double_pitch", 38.1, 1)]
    [InlineData("212A", "212A", "double_pitch", 38.1, 1)]
    [InlineData("LH1644", "LH1644", "leaf", 25.4, 1)]
    [InlineData("BL844", "LH1644", "leaf", 25.4, 1)]
    [InlineData("M112x160", "M112x160", "conveyor", 160, 1)]
    [InlineData("fv112 × 200", "FV112x200", "conveyor", 200, 1)]
    [InlineData("WH78", "WH78", "welded_steel", 66.2686, 1)]
    [InlineData("18 x 64", "18x64", "round_link", 64, 1)]
    [InlineData("EN 818-7 7x21", "7x21", "round_link", 21, 1)]
    [InlineData("C2080H", "C2080H", "double_pitch", 50.8, 1)]
    [InlineData("60HP", "60HP", "roller", 19.05, 1)]
    [InlineData("X458", "X458", "conveyor", 102.4, 1)]
    [InlineData("SC6", "SC6", "inverted_tooth", 19.05, 1)]
    public void A_chain_is_found_by_the_name_that_people_use(string asked, string designation, string family, double pitchMm,
        int strands)
    {
        var type = Assert.IsType<ChainType>(ChainCatalogue.Find(asked));

        Assert.Equal((designation, family, strands), (type.Designation, type.Family.Name, type.Strands));
        Assert.Equal(pitchMm, type.PitchMm!.Value.Value, 1e-9);
    }

    [Theory]
    [InlineData("")]
    [InlineData(null)]
    [InlineData("RS80")]
    [InlineData("16B-0")]
    [InlineData("16B-99")]
    [InlineData("WH78-2")]
    [InlineData("M112x161")]
    [InlineData("M112x40")]
    [InlineData("FV630x40")]
    [InlineData("FV315x40")]
    [InlineData("-")]
    [InlineData("x")]
    public void What_is_no_known_type_is_not_found(string? asked) => Assert.Null(ChainCatalogue.Find(asked));

    [Fact]
    public void A_conveyor_chain_without_a_pitch_offers_the_pitches_it_is_made_in()
    {
        var type = ChainCatalogue.Find("M112")!;

        Assert.Null(type.PitchMm);
        Assert.Equal(160, type.WithPitch(160).PitchMm!.Value.Value);
        Assert.Throws<ArgumentOutOfRangeException>(() => type.WithPitch(161));
    }

    // Source: docs/references.md [37]: at least 12,500 p^2 lbf, p in inches; [5] gives the strengths. No. 41 is the light
    // exception.
    [Fact]
    public void Ansi_chains_have_the_strength_that_the_rule_promises() =>
        Assert.All(ChainCatalogue.All.Where(t => t.Standard == "ASME B29.1" && t is { Strands: 1, Counterpart: not "085" }),
            type =>
        {
            var inches = new Length(type.PitchMm!.Value.Value).Inches;
            Assert.True(Force.FromPounds(12_500 * inches * inches).Kilonewtons <= 1.005 * type.TensileKilonewtons!.Value.Value,
                type.Designation);
        });

    // Sources: docs/references.md [37] (ANSI: eighths of an inch), [52] (B numbers: sixteenths of an inch).
    [Fact]
    public void Names_tell_the_pitch()
    {
        Assert.All(ChainCatalogue.All.Where(t => t is { Standard: "ASME B29.1" }), type =>
            Assert.Equal(int.Parse(type.Designation.Split('-')[0].TrimEnd('H')[..^1], CultureInfo.InvariantCulture) * 25.4 / 8,
                type.PitchMm!.Value.Value, 1e-9));
        Assert.All(
            ChainCatalogue.All.Where(t =>
            t.Standard == "ISO 606" && t.Designation[2] is 'A' or 'B' && t.Designation[..3] is not ("04B" or "05B")), type =>
            Assert.Equal(int.Parse(type.Designation[..2], CultureInfo.InvariantCulture) * 25.4 / 16, type.PitchMm!.Value.Value,
                1e-9));
    }

    // 160 and 32A are the same chain: what is known of one is known of the other, and as surely. A heavy chain has other plates.
    [Fact]
    public void Counterparts_share_their_data()
    {
        Assert.Equal(
            ChainCatalogue.Find("32A-3")!.BushLengthMm!.Value, ChainCatalogue.Find("160-3")!.BushLengthMm!.Value);
        Assert.NotNull(ChainCatalogue.Find("160-3")!.JointAreaMm2);
        Assert.Null(ChainCatalogue.Find("160H")!.BushLengthMm);
    }

    // From memory on both sides, so no proof: d2 b2 of 08B, 16B and 24B.
    [Theory]
    [InlineData("08B", 50.3)]
    [InlineData("16B", 210.7)]
    [InlineData("16B-3", 632.2)]
    [InlineData("24B", 555)]
    public void The_joint_area_is_pin_times_bush_length_over_all_strands(string designation, double mm2)
    {
        var area = ChainCatalogue.Find(designation)!.JointAreaMm2!.Value;

        Assert.Equal(mm2, area.Value, 0.3);
        Assert.False(area.IsVerified);
    }

    [Fact]
    public void Every_number_is_plausible_and_says_where_it_is_from() => Assert.All(ChainCatalogue.All, type =>
        Assert.All(NumbersOf(type), number =>
        {
            Assert.True(number.Value > 0 && double.IsFinite(number.Value), type.Designation);
            Assert.Matches(number.IsVerified ? @"^docs/references\.md (\[\d+\] ?)+$" : "^from memory", number.Source);
        }));

    [Fact]
    public void Rollers_are_smaller_than_the_pitch_and_pins_smaller_than_rollers() => Assert.All(ChainCatalogue.All, type =>
    {
        if (type is { RollerMm: { } roller, PitchMm: { } pitch }) Assert.True(roller.Value < pitch.Value, type.Designation);
        if (type is { RollerMm: { } around, PinMm: { } pin }) Assert.True(pin.Value < around.Value, type.Designation);
    });

    [Fact]
    public void Values_from_memory_are_marked_and_read_ones_are_not()
    {
        Assert.False(ChainCatalogue.Find("M112x160")!.TensileKilonewtons!.Value.IsVerified);
        Assert.False(ChainCatalogue.Find("80-2")!.TensileKilonewtons!.Value.IsVerified);
        Assert.True(ChainCatalogue.Find("80")!.TensileKilonewtons!.Value.IsVerified);
        Assert.Null(ChainCatalogue.Find("16B-5")!.TensileKilonewtons);
    }

    [Fact]
    public void Search_finds_by_any_words_and_puts_the_names_that_begin_so_first()
    {
        Assert.Equal("16B-1", ChainCatalogue.Search("16b")[0].Designation);
        Assert.All(ChainCatalogue.Search("leaf 25.4"), type => Assert.Equal(ChainFamily.Named("leaf"), type.Family));
        Assert.Contains(ChainCatalogue.Search("c2060"), type => type.Designation == "212A");
        Assert.Empty(ChainCatalogue.Search("no such chain"));
        Assert.Equal(ChainCatalogue.All.Count, ChainCatalogue.Search(" ").Count);
    }

    [Fact]
    public void Names_are_unique_and_find_their_own_type() =>
        Assert.All(ChainCatalogue.All, type =>
            Assert.Equal(type.Designation, ChainCatalogue.Find(type.Designation)?.Designation));

    private static IEnumerable<Sourced> NumbersOf(ChainType type) => new[]
    {
        type.PitchMm, type.RollerMm, type.LargeRollerMm, type.BushMm, type.InnerWidthMm, type.PinMm, type.BushLengthMm,
            type.PlateMm,
        type.RowSpacingMm, type.TensileKilonewtons, type.MeasuringForceNewtons, type.NewLengthTolerancePercent,
    }.OfType<Sourced>();
}
