using WearWatch.Plant.Sending;

namespace WearWatch.Worker.Tests.Webhooks;

public sealed class BackoffTests
{
    private static readonly Backoff backoff = new(TimeSpan.FromSeconds(5), TimeSpan.FromHours(1));

    [Theory]
    [InlineData(0, 5)]
    [InlineData(1, 10)]
    [InlineData(2, 20)]
    [InlineData(9, 2560)]
    [InlineData(10, 3600)]
    [InlineData(100_000, 3600)]
    public void Each_pause_is_twice_the_one_before_up_to_the_longest(int before, double seconds) =>
        Assert.Equal(seconds, backoff.After(before).TotalSeconds);

    [Fact]
    public void Those_that_failed_together_come_again_within_a_fifth_but_not_together_and_the_same_way_each_time()
    {
        var pauses = Enumerable.Range(1, 200).Select(seed => backoff.After(3, seed).TotalSeconds).ToArray();
        Assert.All(pauses, p => Assert.InRange(p, 32.0, 48.0));
        Assert.True(pauses.Distinct().Count() > 190);
        Assert.True(pauses.Max() - pauses.Min() > 12);
        Assert.Equal(pauses, Enumerable.Range(1, 200).Select(seed => backoff.After(3, seed).TotalSeconds));
    }
}
