using WearWatch.Wear;

namespace WearWatch.Tests.Wear;

/// <summary>What keeps a notice from asking, and what never does.</summary>
public sealed class NoticeAttentionTests
{
    [Theory]
    [InlineData(false, false, false, NoticeStanding.Asks)]
    [InlineData(true, false, false, NoticeStanding.Acknowledged)]
    [InlineData(false, true, false, NoticeStanding.Snoozed)]
    [InlineData(true, true, true, NoticeStanding.Snoozed)]
    [InlineData(false, false, true, NoticeStanding.Planned)]
    public void Of_a_chain_that_holds_no_load_a_persons_word_or_a_plan_keeps_it_from_asking(
        bool acknowledged, bool snoozed, bool planned, NoticeStanding standing)
    {
        foreach (var urgent in new[] { true, false })
        {
            var notice = Notice(urgent, holdsLoad: false, acknowledged, snoozed, planned);
            Assert.Equal((standing, urgent && standing == NoticeStanding.Asks), (notice.Standing, notice.Shouts));
        }
    }

    [Theory]
    [InlineData(true, false, false)]
    [InlineData(false, true, false)]
    [InlineData(false, false, true)]
    [InlineData(true, true, true)]
    public void What_takes_a_lifting_chain_out_of_use_asks_whatever_was_said_or_planned(
        bool acknowledged, bool snoozed, bool planned)
    {
        var notice = Notice(urgent: true, holdsLoad: true, acknowledged, snoozed, planned);
        Assert.Equal((NoticeStanding.Asks, true, false), (notice.Standing, notice.Shouts, notice.MayBeQuiet));
    }

    [Fact]
    public void What_is_to_be_attended_to_at_a_lifting_chain_may_be_put_off_but_no_plan_answers_it()
    {
        Assert.Equal(NoticeStanding.Snoozed, Notice(false, true, false, snoozed: true, planned: false).Standing);
        Assert.Equal(NoticeStanding.Asks, Notice(false, true, false, snoozed: false, planned: true).Standing);
    }

    private static NoticeAttention Notice(bool urgent, bool holdsLoad, bool acknowledged, bool snoozed, bool planned) =>
        new(NoticeKind.LimitNear, urgent, holdsLoad)
        {
            IsAcknowledged = acknowledged,
            IsSnoozed = snoozed,
            SwapIsPlanned = planned,
        };
}
