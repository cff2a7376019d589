using WearWatch.Lives;

namespace WearWatch.Tests.Lives;

public sealed class LogRankTests
{
    // R survival 3.5-3: survdiff(Surv(time, event) ~ group); its figures have 15 digits.
    [Theory]
    [InlineData("gehan", "freireich_6MP", "freireich_placebo")]
    [InlineData("aml", "aml_maintained", "aml_nonmaintained")]
    public void Two_published_trials_compare_as_in_R(string id, string first, string second)
    {
        var expected = PublishedLives.LogRank.GetProperty(id);
        var found = LogRank.Compare([PublishedLives.SurvivalCase(first).Lives(), PublishedLives.SurvivalCase(second).Lives()]);
        Assert.Equal(expected.Number("chisq"), found.ChiSquare, 11);
        Assert.Equal(expected.Number("p"), found.PValue, 11);
        Assert.Equal(1, found.DegreesOfFreedom);
        Assert.Equal(expected.GetProperty("obs").Numbers(), found.Observed.Select(o => (double)o));
        Assert.All(expected.GetProperty("exp").Numbers().Zip(found.Expected), e => Assert.Equal(e.First, e.Second, 11));
    }

    // Published: chi-square 16.79 for the 6-MP trial (from memory of E. A. Gehan's data in the textbooks that carry it).
    [Fact]
    public void The_6MP_trial_gives_the_textbook_value() => Assert.Equal(16.79, Math.Round(LogRank.Compare(
        [PublishedLives.SurvivalCase("freireich_6MP").Lives(),
            PublishedLives.SurvivalCase("freireich_placebo").Lives()]).ChiSquare, 2));

    [Fact]
    public void Three_equal_groups_show_no_difference()
    {
        IReadOnlyCollection<Life> group = [A.Life(10), A.Life(20), A.Life(30, failed: false)];
        var found = LogRank.Compare([group, group, group]);
        Assert.Equal(0, found.ChiSquare, 12);
        Assert.Equal(1, found.PValue, 12);
        Assert.Equal(2, found.DegreesOfFreedom);
    }

    [Fact]
    public void Failures_seen_and_expected_add_up_alike()
    {
        var found = LogRank.Compare(
            [[A.Life(10), A.Life(15)], [A.Life(12), A.Life(40, failed: false)], [A.Life(30), A.Life(31)]]);
        Assert.Equal(found.Observed.Sum(), found.Expected.Sum(), 12);
    }

    [Fact]
    public void The_order_of_groups_does_not_matter()
    {
        IReadOnlyCollection<Life> a = [A.Life(10), A.Life(15)], b = [A.Life(12), A.Life(40, failed: false)],
            c = [A.Life(30), A.Life(31)];
        Assert.Equal(LogRank.Compare([a, b, c]).ChiSquare, LogRank.Compare([c, a, b]).ChiSquare, 12);
    }

    [Fact]
    public void One_group_or_none_has_nothing_to_differ_from()
    {
        Assert.Equal(1, LogRank.Compare([]).PValue);
        Assert.Equal(1, LogRank.Compare([[A.Life(10), A.Life(20)]]).PValue);
    }

    // A group whose chains were all taken off before the first failure says nothing and costs no degree of freedom.
    [Fact]
    public void A_group_never_at_risk_at_a_failure_is_left_out()
    {
        IReadOnlyCollection<Life> a = [A.Life(10), A.Life(15)], b = [A.Life(12), A.Life(40)], early = [A.Life(5, failed: false)];
        Assert.Equal(LogRank.Compare([a, b]).ChiSquare, LogRank.Compare([a, b, early]).ChiSquare, 12);
        Assert.Equal(1, LogRank.Compare([a, b, early]).DegreesOfFreedom);
    }
}
