using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Chains.Links;
using WearWatch.Plant.Files;
using WearWatch.Plant.Register;
using WearWatch.Running;

namespace WearWatch.Worker.Tests.Register;

public sealed class CardTextTests
{
    private static readonly ChainCard Full = new()
    {
        Name = "C1",
        Line = "Press",
        Position = "infeed",
        ChainType = "M112x160",
        Family = ChainFamily.Named("conveyor"),
        PitchMm = 160,
        Pitches = 240,
        SprocketTeeth = [8, 12],
        FittedAt = TestPlant.Start,
        FittedCounter = new RunningHours(12.5),
        Lot = "B-2417",
        LimitPercent = 2.25,
        LimitSetReason = "jam",
        Strands = 2,
        FixedCentres = true,
        RunsInParallel = true,
        Timing = true,
        Positioning = true,
        HighPerformance = true,
        Lifts = true,
        LinkEntry = new()
        {
            Use = LinkUse.Sling,
            DiameterMm = 5,
            Links = 7,
            OuterEdges = true,
            OneLinkLimitMm = 15.7,
            SeveralLinksLimitMm = 118,
            DiameterLimitMm = 4.5,
            UnusedSeveralLinksMm = 115.2,
            Source = "a hoist maker's manual",
        },
        NotLiftingReason = "it is a conveyor",
        CentreDistanceMm = 9000,
        TakeUpTravelMm = 300,
        GroupDifferenceMm = 30,
        Material = ChainMaterial.Plastic,
        OilPlace = OilPlace.ExplosiveAtmosphere,
        Kit = new SpareKit("A1 both sides", "0815", "S-19"),
        OilMethod = OilMethod.Drip,
        OilGrade = "ISO VG 100",
        OilingIntervalHours = 24,
        OilingSurroundingsFactor = 0.5,
        Duty = new Duty
        {
            RelativeLoad = 0.4,
            SpeedMetresPerSecond = 0.3,
            Lubrication = LubricationState.Manual,
            Dust = DustLevel.Heavy,
            AmbientC = 35,
        },
    };

    [Fact]
    public void A_card_survives_being_written_and_read()
    {
        var (card, faults) = CardText.Read(CardText.Write(Full), TimeZoneInfo.Utc);
        Assert.Empty(faults);
        Assert.Empty(CardChanges.Between(Full, card!));
        Assert.Equal(Full.Name, card!.Name);
    }

    [Fact]
    public void Every_column_of_the_file_can_be_told_apart_as_a_change()
    {
        var plain = new ChainCard { Name = "C1", PitchMm = 25.4 };
        Assert.Equal(ChainColumns.All.Select(c => c.Name), CardChanges.Between(plain, Full).Select(c => c.Field));
    }

    [Fact]
    public void All_slips_are_told_at_once_each_at_its_field()
    {
        var (_, faults) = CardText.Read(
            new Dictionary<string, string>
            {
                ["chain"] = "C1",
                ["family"] = "roller",
                ["pitch_mm"] = "one inch",
                ["pitches"] = "0",
                ["sprocket_teeth"] = "3",
                ["dust"] = "sand",
            }, TimeZoneInfo.Utc);
        Assert.Equal(
            ["dust", "pitch_mm", "pitches", "sprocket_teeth"], faults.Select(f => f.Field).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Without_a_pitch_a_known_type_serves_and_without_both_the_pitch_is_asked_for()
    {
        Assert.Equal(25.4, CardText.Read(
            new Dictionary<string, string> { ["chain"] = "C1", ["chain_type"] = "16B-1" }, TimeZoneInfo.Utc).Card!.PitchMm);
        var (card, faults) = CardText.Read(new Dictionary<string, string> { ["chain"] = "C1" }, TimeZoneInfo.Utc);
        Assert.Null(card);
        Assert.Equal(["pitch_mm", "family"], faults.Select(f => f.Field));
    }

    // docs/safety.md: the kind is never guessed; a program and a form are asked for it.
    [Theory]
    [InlineData("", "", "family")]
    [InlineData("6x19", "", "family")]
    [InlineData("LH16345", "", "family")]
    [InlineData("LH1634", "roller", "family")]
    [InlineData("LH1634", "", null)]
    [InlineData("6x19", "round_link", null)]
    public void A_kind_that_cannot_be_told_is_asked_for(string type, string family, string? field)
    {
        var (card, faults) = CardText.Read(
            new Dictionary<string, string>
            {
                ["chain"] = "C1",
                ["chain_type"] = type,
                ["family"] = family,
                ["pitch_mm"] = "25.4",
            }, TimeZoneInfo.Utc);
        Assert.Equal(field, faults.Select(f => f.Field).SingleOrDefault());
        Assert.Equal(field is null, card?.HoldsLoad == true);
    }

    [Fact]
    public void A_reason_without_a_limit_is_not_kept() =>
        Assert.Equal("", CardText.Read(new Dictionary<string, string>
        {
            ["chain"] = "C1",
            ["family"] = "roller",
            ["pitch_mm"] = "25.4",
            ["limit_set_reason"] = "jam",
        }, TimeZoneInfo.Utc).Card!.LimitSetReason);
}
