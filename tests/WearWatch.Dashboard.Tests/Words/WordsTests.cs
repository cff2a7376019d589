using WearWatch.Chains;
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Gauging;
using WearWatch.Plant.Settings;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Tests.Words;

public sealed class WordsTests
{
    [Fact]
    public void Every_word_of_the_trade_is_there_and_means_one_thing()
    {
        OneWordEach<LimitReason>(TradeWords.Of);
        OneWordEach<Tool>(TradeWords.Of);
        OneWordEach<ChainEventKind>(TradeWords.Of);
        OneWordEach<NoticeKind>(TradeWords.Of);
        OneWordEach<LubricationState>(v => DutyWords.Of(v).ToString());
        OneWordEach<DustLevel>(v => DutyWords.Of(v).ToString());
        OneWordEach<OilMethod>(v => DutyWords.Of(v).ToString());
    }

    [Theory]
    [InlineData(0, " (with 0.20 % of run-in that is still to come)")]
    [InlineData(1000, "")]
    public void What_a_chain_just_fitted_has_before_it_is_told(double hours, string words) =>
        Assert.Equal(words, RunInWords.Of(A.Assessment(hoursAtLastReading: hours)));

    [Theory]
    [InlineData(0, "today")]
    [InlineData(0.4, "today")]
    [InlineData(-1, "1 day ago")]
    [InlineData(13, "in 13 days")]
    [InlineData(14, "in 2 weeks")]
    [InlineData(-100, "3 months ago")]
    [InlineData(1000, "in 3 years")]
    public void A_moment_is_told_by_how_far_it_is_away(double days, string words) =>
        Assert.Equal(words, A.Time().Away(A.In(days)).ToString());

    [Fact]
    public void Moments_are_told_in_the_plants_zone_and_24_hours() =>
        Assert.Equal("25 Nov 2026 13:00", A.Time("Europe/Vienna").Moment(A.Now));

    [Theory]
    [InlineData(2026, 11, 23, 2026, 11, 23)]
    [InlineData(2026, 11, 29, 2026, 11, 23)]
    [InlineData(2027, 1, 1, 2026, 12, 28)]
    public void A_week_begins_on_Monday(int y, int m, int d, int my, int mm, int md) =>
        Assert.Equal(new DateOnly(my, mm, md), PlantTime.MondayOf(new DateOnly(y, m, d)));

    [Theory]
    [InlineData(0, "0 %")]
    [InlineData(0.004, "under 1 %")]
    [InlineData(0.5, "50 %")]
    [InlineData(0.997, "over 99 %")]
    public void A_chance_that_is_nearly_sure_is_told_so(double probability, string words) =>
        Assert.Equal(words, Show.Chance(probability));

    [Fact]
    public void Figures_carry_their_units()
    {
        Assert.Equal("1.83 %", Show.Percent(1.829));
        Assert.Equal("–", Show.Percent(null));
        Assert.Equal("12,400 h", Show.Hours(12_399.7));
        Assert.Equal("0.021 % per 1,000 h", Show.Rate(0.0212));
        Assert.Equal("1,219.4 mm", Show.Millimetres(1219.4));
        Assert.Equal("1 chain", Show.Count(1, "chain"));
        Assert.Equal("3,012 chains", Show.Count(3012, "chain"));
    }

    private static void OneWordEach<T>(Func<T, string> word)
        where T : struct, Enum
    {
        var words = Enum.GetValues<T>().Select(word).ToList();
        Assert.All(words, Assert.NotEmpty);
        Assert.Equal(words.Count, words.Distinct().Count());
    }
}
