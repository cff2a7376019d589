using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Plant.Files;
using WearWatch.Running;

namespace WearWatch.Worker.Tests.Files;

public sealed class ChainTextTests
{
    private const string Header =
        "chain,line,position,chain_type,pitch_mm,pitches,fitted_at,fitted_counter_h,limit_pct,load_rel,"
        + "speed_m_s,lubrication,dust";

    [Fact]
    public void A_chain_is_read_as_it_stands()
    {
        var card = Assert.IsType<FileItem.Chain>(
            Assert.Single(Rows($"{Header}\nC1,L1,P1,,19.05,120,2026-01-02,14800,2.5,0.941,1.824,auto,heavy\n"))).Card;
        Assert.Equal(new ChainCard
        {
            Name = "C1",
            Line = "L1",
            Position = "P1",
            PitchMm = 19.05,
            Pitches = 120,
            SprocketTeeth = card.SprocketTeeth,
            FittedAt = new DateTimeOffset(2026, 1, 2, 0, 0, 0, TimeSpan.Zero),
            FittedCounter = new RunningHours(14800),
            LimitPercent = 2.5,
            Duty = new Duty
            {
                RelativeLoad = 0.941,
                SpeedMetresPerSecond = 1.824,
                Lubrication = LubricationState.Auto,
                Dust = DustLevel.Heavy,
            },
        }, card);
        Assert.Empty(card.SprocketTeeth);
    }

    [Fact]
    public void The_pitch_of_a_known_chain_type_need_not_be_written()
    {
        // ISO 606: 16B has a pitch of 25.4 mm, which is 16 sixteenths of an inch. docs/references.md
        var card = Assert.IsType<FileItem.Chain>(Assert.Single(Rows("chain,chain_type\nC1,16B-1\n"))).Card;
        Assert.Equal((25.4, ChainFamily.Usual), (card.PitchMm, card.Family));
    }

    [Theory]
    [InlineData("chain,chain_type\nC1,unheard-of\n", "chain_type")]
    [InlineData("chain,pitch_mm\nC1,\n", "pitch_mm")]
    [InlineData("chain,pitch_mm\nC1,0\n", "pitch_mm")]
    [InlineData("chain,pitch_mm\nC1,half an inch\n", "pitch_mm")]
    [InlineData("chain,pitch_mm,limit_pct\nC1,25.4,30\n", "limit_pct")]
    [InlineData("chain,pitch_mm,lubrication\nC1,25.4,often\n", "lubrication")]
    [InlineData("chain,pitch_mm,dust\nC1,25.4,some\n", "dust")]
    [InlineData("chain,pitch_mm,sprocket_teeth\nC1,25.4,3\n", "sprocket_teeth")]
    [InlineData("chain,pitch_mm,lifts\nC1,25.4,sometimes\n", "lifts")]
    [InlineData("chain,chain_type,pitch_mm\nC1,6x19,19\n", "chain_type")]
    [InlineData("chain,chain_type,pitch_mm,family\nC1,LH16345,25.4,\n", "family")]
    [InlineData("chain,chain_type,pitch_mm,family\nC1,LH1634,25.4,roller\n", "family")]
    [InlineData("chain,chain_type,family,pitch_mm\nC1,,chandelier,25.4\n", "family")]
    [InlineData("chain,family,pitch_mm,limit_pct\nC1,leaf,25.4,5\n", "limit_pct")]
    [InlineData("chain,family,pitch_mm,not_lifting_reason\nC1,leaf,25.4,it is a door\n", "not_lifting_reason")]
    public void What_is_wrong_with_a_chain_is_said_with_its_column(string text, string column) =>
        Assert.Equal((2, column), Rows(text).Cast<FileItem.Unreadable>().Select(f => (f.Line, f.Column)).Single());

    // docs/safety.md: a mistyped leaf chain that became a roller chain would be told to be shortened.
    [Theory]
    [InlineData("chain,chain_type,family\nC1,LH1634,\n", "leaf")]
    [InlineData("chain,chain_type,pitch_mm,family\nC1,ours,25.4,round_link\n", "round_link")]
    [InlineData("chain,pitch_mm\nC1,25.4\n", "roller")]
    [InlineData("chain,chain_type,family\nC1,16B-1,custom\n", "custom")]
    public void A_kind_is_told_or_that_of_a_known_type_and_never_guessed(string text, string family) =>
        Assert.Equal(family, Assert.IsType<FileItem.Chain>(Assert.Single(Rows(text))).Card.Family.Name);

    [Fact]
    public void A_registered_chain_of_a_type_of_ones_own_keeps_its_kind()
    {
        var known = new ChainCard { Name = "C1", PitchMm = 25.4, ChainType = "ours", Family = ChainFamily.Named("leaf") };
        Assert.Equal(
            known with { Line = "L2" },
            Assert.IsType<FileItem.Chain>(Assert.Single(Rows("chain,chain_type,line\nC1,ours,L2\n", known))).Card);
    }

    [Fact]
    public void Columns_that_the_file_does_not_have_keep_what_is_registered()
    {
        var known = new ChainCard { Name = "C1", PitchMm = 25.4, Line = "L1", LimitPercent = 2, SprocketTeeth = [17, 75] };
        var card = Assert.IsType<FileItem.Chain>(Assert.Single(Rows("chain,chain_type,limit_pct\nC1,,1.5\n", known))).Card;
        Assert.Equal(known with { LimitPercent = 1.5 }, card);
    }

    [Fact]
    public void Every_column_that_is_written_is_read_back()
    {
        var card = new ChainCard
        {
            Name = "C1",
            Line = "L, with a comma",
            Position = "P \"quoted\"",
            ChainType = "M112x160",
            Family = ChainFamily.Named("conveyor"),
            PitchMm = 160,
            Pitches = 200,
            SprocketTeeth = [8, 12],
            FittedAt = new DateTimeOffset(2026, 1, 2, 3, 4, 5, TimeSpan.Zero).AddTicks(1),
            FittedCounter = new RunningHours(0.1),
            Lot = "B-2417",
            LimitPercent = 0.4,
            LimitSetReason = "the maker says so",
            Strands = 2,
            FixedCentres = true,
            RunsInParallel = true,
            Timing = true,
            Positioning = true,
            HighPerformance = true,
            Lifts = true,
            CentreDistanceMm = 4000.5,
            TakeUpTravelMm = 120,
            OilingIntervalHours = 250,
            OilingSurroundingsFactor = 0.5,
            Duty = new Duty
            {
                RelativeLoad = 1 / 3.0,
                SpeedMetresPerSecond = 0.2,
                Lubrication = LubricationState.Dry,
                Dust = DustLevel.Clean,
            },
        };
        var names = string.Join(',', ChainColumns.All.Select(c => c.Name));
        var fields = string.Join(',', ChainColumns.All.Select(c => Quoted(c.Write(card))));
        var text = $"chain,{names}\nC1,{fields}\n";
        var item = Assert.Single(Rows(text));
        var back = item is FileItem.Chain chain ? chain.Card : throw new InvalidDataException(item.ToString());
        Assert.Equal(card.SprocketTeeth, back.SprocketTeeth);
        Assert.Equal(card with { SprocketTeeth = [] }, back with { SprocketTeeth = [] });
    }

    private static string Quoted(string text) => $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";

    private static IEnumerable<FileItem> Rows(string text, params ChainCard[] known) =>
        new PlantFile(A.File("chains.csv", text), TimeZoneInfo.Utc).Rows(known.ToDictionary(c => c.Name));
}
