using WearWatch.Gauging;
using WearWatch.Wear;

namespace WearWatch.Tests.Wear;

public sealed class CorrectionTests
{
    private const double Worn = 40 * A.PitchMm * 1.01;

    [Theory]
    [InlineData(Worn / 10, 40, "the decimal point slipped")]
    [InlineData(Worn * 10, 40, "the decimal point slipped")]
    [InlineData(Worn / 25.4, 40, "it was read in inches")]
    [InlineData(Worn * 25.4, 40, "it was read in millimetres")]
    [InlineData(12 * A.PitchMm * 1.01, 11, "12 pitches instead of 11")]
    [InlineData(12 * A.PitchMm * 1.01, 13, "12 pitches instead of 13")]
    public void What_a_slip_was_meant_to_be_is_offered(double lengthMm, int pitches, string words)
    {
        var held = Assert.Single(After(A.Reading(4000, 0, pitches: pitches, lengthMm: lengthMm)).HeldBack);

        Assert.Equal(4, held.ReadingIndex);
        Assert.Contains(words, held.Corrections[0].ToString(), StringComparison.Ordinal);
        Assert.EndsWith("1.00 %", held.Corrections[0].ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(-1.5)]
    [InlineData(8.5)]
    [InlineData(-90)]
    [InlineData(100_000)]
    public void A_reading_that_cannot_be_never_reaches_the_track(double percent)
    {
        var history = After(A.Reading(4000, percent));

        Assert.Equal(4, history.Current.Observations.Count);
        Assert.NotEmpty(Assert.Single(history.HeldBack).Reason.ToString());
    }

    [Fact]
    public void Nothing_is_offered_that_does_not_fit() =>
        Assert.Empty(Assert.Single(After(A.Reading(4000, 30)).HeldBack).Corrections);

    [Fact]
    public void A_length_that_is_no_measurement_says_why() =>
        Assert.Contains("pitch", Assert.Single(After(A.Reading(4000, 0, pitches: 0, lengthMm: 100)).HeldBack).Reason.ToString(),
            StringComparison.Ordinal);

    private static ChainHistory After(Reading last) =>
        ChainHistory.Take(A.Card(), [.. A.Readings(0.2, 500, 1500, 2500, 3500), last], []);
}
