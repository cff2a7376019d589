using WearWatch.Lives;

namespace WearWatch.Tests.Lives;

public sealed class TrackRecordTests
{
    private const string Whole = "fleet";
    private const string Part = "fleet_part";

    /// <summary>
    /// Forecasts of simulated chains at four shares of life against three limits: all 200 as this program made them, and 28 with
    /// answers that lack an end or are missing; see tests/data/lives/SOURCES.md.
    /// </summary>
    private static readonly Dictionary<string, ILookup<(double Limit, double Share), ScoredForecast>> Fleets =
        new[] { Whole, Part }.ToDictionary(f => f, Forecasts);

    public static TheoryData<string, double, double> Cells =>
        new(new[] { Whole, Part }.SelectMany(f =>
            PublishedLives.Rows(f + "_scores.csv").Select(r => (f, PublishedLives.Parse(r[0]), PublishedLives.Parse(r[1])))));

    // Oracle: the independent scorer that accepts the project's forecasts, run on the same answers; its table has 3 digits
    // (width 2). Of an even number of widths it averages the middle two, as we do.
    [Theory]
    [MemberData(nameof(Cells))]
    public void A_fleet_scores_as_the_independent_scorer_says(string fleet, double limit, double share)
    {
        var expected = PublishedLives.Rows(fleet + "_scores.csv").Select(r => r.Select(PublishedLives.Parse).ToArray())
            .Single(r => r[0] == limit && r[1] == share)[2..];
        var record = TrackRecord.Of([.. Fleets[fleet][(limit, share)]]);
        double[] found =
        [
            record.Count, record.Answered.Fraction, record.MedianError, record.MedianAbsoluteError, record.Close.Fraction,
            record.Late.Fraction, record.Held90.Fraction, record.EndedBeforeInterval.Fraction,
        ];
        Assert.All(expected.Zip(found), e => Assert.Equal(e.First, e.Second, 0.00051));
        Assert.Equal(expected[^1], record.MedianWidth, 0.0051);
    }

    // The same scorer, all cells pooled.
    [Theory]
    [InlineData(Whole, 2400, 2400, 0.898, 0.059, 0.043)]
    [InlineData(Part, 322, 336, 0.832, 0.106, 0.062)]
    public void The_pooled_shares_are_those_of_the_independent_scorer(
        string fleet, int answered, int asked, double held, double tooLate, double tooEarly)
    {
        var record = TrackRecord.Of([.. Fleets[fleet].SelectMany(cell => cell)]);
        Assert.Equal(new ObservedShare(answered, asked), record.Answered);
        Assert.Equal(held, record.Held90.Fraction, 0.0005);
        Assert.Equal(tooLate, record.EndedBeforeInterval.Fraction, 0.0005);
        Assert.Equal(tooEarly, record.EndedAfterInterval.Fraction, 0.0005);
    }

    [Fact]
    public void Held_missed_early_and_missed_late_are_all_there_is()
    {
        var record = TrackRecord.Of([.. Fleets[Part].SelectMany(cell => cell)]);
        Assert.Equal(record.Answered.Hits, record.Held90.Hits + record.EndedBeforeInterval.Hits + record.EndedAfterInterval.Hits);
    }

    [Fact]
    public void Calibration_rises_with_the_stated_share()
    {
        var calibration = TrackRecord.Of([.. Fleets[Part].SelectMany(cell => cell)]).Calibration;
        Assert.Equal(calibration.Select(p => p.Stated).Order(), calibration.Select(p => p.Stated));
        Assert.Equal(calibration.Select(p => p.Observed.Hits).Order(), calibration.Select(p => p.Observed.Hits));
    }

    [Fact]
    public void A_forecast_is_judged_by_the_true_hours_left()
    {
        // 900 h + 1,300 h = 2,200 h against 2,000 h, of which 1,000 h were left
        var scored = A.ScoredForecast(A.Forecast(600, 1300, 2000));
        Assert.Equal(0.2, scored.RelativeError!.Value, 12);
        Assert.Equal(0.5, scored.LifeShare);
        Assert.Equal(1.4, scored.RelativeWidth, 12);
        Assert.True(scored.Held90);
        Assert.False(scored.IsLateWarning); // 2,200 h is exactly 1.1 times the life
        Assert.True(A.ScoredForecast(A.Forecast(600, 1301, 2000)).IsLateWarning);
    }

    [Fact]
    public void What_is_forecast_before_the_moment_of_standing_counts_from_there()
    {
        var scored = A.ScoredForecast(A.Forecast(10, 50, 90)); // all of it had passed by 1,000 h
        Assert.Equal(-1, scored.RelativeError!.Value, 12);
        Assert.True(scored.EndedAfterInterval);
        Assert.Equal(0, scored.RelativeWidth);
    }

    [Fact]
    public void An_interval_without_an_upper_end_holds_and_is_infinitely_wide()
    {
        var scored = A.ScoredForecast(A.Forecast(600, 1000, double.PositiveInfinity));
        Assert.True(scored.Held90);
        Assert.Equal(double.PositiveInfinity, scored.RelativeWidth);
    }

    [Fact]
    public void The_50_percent_interval_runs_from_quarter_to_three_quarters()
    {
        // straight between 5, 50 and 95 %: quarters at 544.4 and 1,655.6 h for 100, 1,000, 2,180
        Assert.True(A.ScoredForecast(A.Forecast(100, 1000, 2180), life: 900 + 505).Held50);
        Assert.False(A.ScoredForecast(A.Forecast(100, 1000, 2180), life: 900 + 495).Held50);
    }

    [Fact]
    public void No_forecast_is_a_miss_but_breaks_no_interval()
    {
        var record = TrackRecord.Of([A.ScoredForecast(null), A.ScoredForecast(A.Forecast(600, 1100, 2000))]);
        Assert.Equal(new ObservedShare(1, 2), record.Answered);
        Assert.Equal(new ObservedShare(1, 2), record.Close);
        Assert.Equal(new ObservedShare(1, 1), record.Held90);
    }

    [Fact]
    public void An_empty_record_says_nothing()
    {
        var record = TrackRecord.Of([]);
        Assert.Equal(0, record.Count);
        Assert.Equal(double.NaN, record.MedianError);
        Assert.Equal(double.NaN, record.Held90.Fraction);
    }

    [Fact]
    public void A_forecast_of_a_limit_already_reached_is_not_scored() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => A.ScoredForecast(null, standing: 2000, life: 2000));

    // R: binom.test(8,10)$conf.int, binom.test(0,20)$conf.int, binom.test(180,200,conf.level=.9)$conf.int
    [Theory]
    [InlineData(8, 10, 0.95, 0.4439045377, 0.9747892737)]
    [InlineData(0, 20, 0.95, 0, 0.168433471)]
    [InlineData(180, 200, 0.90, 0.8580107484, 0.9327385989)]
    public void Binomial_bands_are_those_of_R(int hits, int of, double level, double low, double high)
    {
        var band = new ObservedShare(hits, of).Band(level);
        Assert.Equal(low, band.Low, 1e-9);
        Assert.Equal(high, band.High, 1e-9);
    }

    [Fact]
    public void All_of_all_reaches_up_to_one_and_nothing_of_nothing_says_nothing()
    {
        Assert.Equal(1, new ObservedShare(20, 20).Band(0.95).High);
        Assert.Equal(new ConfidenceInterval(0, 1), new ObservedShare(0, 0).Band(0.95));
    }

    private static ILookup<(double Limit, double Share), ScoredForecast> Forecasts(string fleet) =>
        PublishedLives.Rows(fleet + "_forecasts.csv")
            .ToLookup(r => (PublishedLives.Parse(r[1]), PublishedLives.Parse(r[2])), r => A.ScoredForecast(
            r[7].Length == 0 ? null : A.Forecast(PublishedLives.Parse(r[6]), PublishedLives.Parse(r[7]), r[8].Length == 0
                ? double.PositiveInfinity
                : PublishedLives.Parse(r[8])),
            PublishedLives.Parse(r[3]), PublishedLives.Parse(r[4]), PublishedLives.Parse(r[5])));
}
