using WearWatch.Planning.Costs;
using WearWatch.Planning.Measuring;
using WearWatch.Planning.Swaps;
using WearWatch.Wear;

namespace WearWatch.Planning.Tests.Measuring;

/// <summary>The expected value of sample information, against the sums written out.</summary>
public sealed class ReadingValueTests
{
    private static readonly double[] Windows = [400, 1500];

    [Fact]
    public void A_reading_that_tells_a_short_life_from_a_long_one_is_worth_what_it_saves()
    {
        // Half 500 h, half 2,000 h; 4,000 h run; a chain of 300.
        var task = A.Swap(forecast: new WearForecast
        {
            LimitPercent = 3,
            ProbabilityPassed = 0,
            PercentilesHours = [.. Enumerable.Repeat(500.0, 50), .. Enumerable.Repeat(2000.0, 49)],
        });
        const double unknown = 0.5 * 300 * 100 / 4500 + 0.5 * 300 * 1600 / 6000; // both at 400 h
        const double known = 0.5 * 300 * 100 / 4500 + 0.5 * 300 * 500 / 6000; // the long one at 1,500 h
        // The first percent of a distribution begins now: what is certain still costs a little risk, which known lives show most.
        var worth = Worth(task, (0.5, A.Certain(500)), (0.5, A.Certain(2000)));
        Assert.InRange(worth, 0.8 * (unknown - known), unknown - known);
    }

    [Fact]
    public void A_reading_that_changes_no_decision_is_worth_nothing()
    {
        var task = A.Swap(forecast: A.Certain(500));
        Assert.Equal(0, Worth(task, (0.5, A.Certain(450)), (0.5, A.Certain(550))), 9);
    }

    [Fact]
    public void A_chain_far_from_its_limit_is_not_worth_a_reading() =>
        Assert.Equal(0, Worth(A.Swap(median: 50_000), (0.5, A.Forecast(40_000)), (0.5, A.Forecast(60_000))), 9);

    private static double Worth(SwapTask task, params (double Probability, WearForecast Left)[] outcomes) => ReadingValue.Of(
        task, outcomes.Select(o => (o.Probability, new HoursToLimit(o.Left, 0))), Windows, 3000, new PlanningCosts());
}
