using WearWatch.Chains;
using WearWatch.Wear;

namespace WearWatch.Tests.Wear;

public sealed class ConditionRuleTests
{
    private static readonly ReplacementLimit Limit = new(3, LimitReason.General, "test");

    [Fact]
    public void Without_readings_nothing_is_known() => Assert.Equal(Condition.NotKnown, Of(null, passed: 0.9, earlyHours: 0));

    [Theory]
    [InlineData(1.0, 0.00, 5000, Condition.WithinLimit)]
    [InlineData(1.0, 0.00, 1344, Condition.PlanASwap)]
    [InlineData(1.0, 0.04, 5000, Condition.WithinLimit)]
    [InlineData(1.0, 0.06, 5000, Condition.PlanASwap)]
    [InlineData(2.9, 0.50, 0, Condition.SwapNow)]
    [InlineData(3.0, 0.30, 0, Condition.SwapNow)]
    public void The_rule_of_the_method_page_holds(double elongation, double passed, double earlyHours, Condition condition) =>
        Assert.Equal(condition, Of(elongation, passed, earlyHours));

    [Fact]
    public void A_planning_mark_of_the_limits_own_rule_counts() =>
        Assert.Equal(Condition.PlanASwap, Of(2.1, passed: 0, earlyHours: 9000, Limit with { PlanFromPercent = 2 }));

    /// <summary>Eight weeks round the clock are 1,344 h.</summary>
    private static Condition Of(double? elongation, double passed, double earlyHours, ReplacementLimit? limit = null) =>
        ConditionRule.Of(
        elongation, limit ?? Limit,
        new()
        {
            LimitPercent = 3,
            ProbabilityPassed = passed,
            PercentilesHours = [.. Enumerable.Range(1, 99)
                .Select(p => Math.Max(earlyHours, 0) + 100.0 * (p - 5) * (p > 5 ? 1 : 0))],
        },
        hoursSinceReading: 0, new(1344), liftingUpperPercent: null);
}
