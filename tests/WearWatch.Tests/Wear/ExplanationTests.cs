using WearWatch.Gauging;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Tests.Wear;

public sealed class ExplanationTests
{
    private static readonly Reading[] Steady =
        [.. A.Readings(0.2, 300, 1000, 2000, 3000, 4000).Select((r, i) => r with { TakenAt = A.Monday.AddDays(30 * (i - 4)) })];

    [Fact]
    public void It_says_what_was_expected_what_was_read_and_what_follows()
    {
        var sentences = Explain(Steady);

        Assert.Equal("Before its first reading a chain here was expected to wear by 0.20 % in 1,000 running hours, most likely "
            + "between 0.074 and 0.544 % (broad prior).", sentences[0]);
        Assert.StartsWith("5 readings from 300 to 4,000 running hours put it at 1.0", sentences[1], StringComparison.Ordinal);
        Assert.Matches("the limit of 3.0 % is [0-9,]+ h away from the last reading\\. One chance in twenty that it is less than "
            + "[0-9,]+ h", sentences[2]);
        Assert.Matches("^By the production calendar: early date \\d+ \\w+ 2026, "
            + "median date \\d+ \\w+ 202[67]\\.$", sentences[3]);
        Assert.Equal(4, sentences.Count);
    }

    [Fact]
    public void Without_readings_it_says_that_all_rests_on_the_expectation() =>
        Assert.Contains(Explain([]), s => s.Contains("no reading that could be used", StringComparison.Ordinal));

    [Fact]
    public void A_doubted_reading_and_one_left_out_are_told()
    {
        var sentences = Explain([.. Steady, A.Reading(4500, 2.2), A.Reading(4900, 40)]);

        Assert.Contains(
            sentences, s => s.StartsWith("The reading of 2.20 % at 4,500 h was doubted when it came", StringComparison.Ordinal));
        Assert.Contains("One reading that cannot be was left out.", sentences);
    }

    [Fact]
    public void A_risen_rate_is_told_with_its_beginning() =>
        Assert.Contains(
            Explain([.. Steady, A.Reading(4500, 1.3), A.Reading(5000, 1.6), A.Reading(5500, 1.9)]),
            s => s.StartsWith("Its rate rose from 0.2", StringComparison.Ordinal)
                && s.EndsWith("after about 4,000 h.", StringComparison.Ordinal));

    [Fact]
    public void A_passed_limit_is_told_as_such() =>
        Assert.Contains("It has passed the limit of 1.0 %.",
            Explain([.. Steady, A.Reading(5000, 1.2), A.Reading(6000, 1.4)], limitPercent: 1.0));

    private static IReadOnlyList<string> Explain(Reading[] readings, double? limitPercent = null) =>
    [
        .. Explanation.Of(Assessment.Of(
            A.Card(limitPercent: limitPercent), readings, [], WearPrior.Broad, ProductionCalendar.AlwaysRunning, A.Monday),
            ProductionCalendar.AlwaysRunning, A.Monday).Select(sentence => sentence.ToString()),
    ];
}
