using WearWatch.Plant.Mailing;
using WearWatch.Plant.Settings;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Worker.Tests.Mailing;

/// <summary>Which notices are mailed to a person at a moment. The plant's clock is Vienna's: two hours ahead of UTC.</summary>
public sealed class MailDueTests
{
    private static readonly TimeZoneInfo zone = TimeZoneInfo.FindSystemTimeZoneById("Europe/Vienna");
    private static readonly DateTimeOffset chosen = new(2026, 6, 1, 0, 0, 0, TimeSpan.Zero);
    private static readonly HashSet<(long, bool)> none = [];

    [Fact]
    public void Each_notice_comes_once_by_itself_and_once_more_when_it_became_urgent()
    {
        var wish = Wish(MailRhythm.AtOnce);
        var notice = Notice(1);
        var mail = MailDue.Of(wish, [notice], none, false, At("2026-06-02T10:00"))!;
        Assert.Equal([1L], mail.New.Select(n => n.Notice.Id));
        Assert.False(mail.IsDaily);
        Assert.Null(MailDue.Of(wish, [notice], Has((1, false)), false, At("2026-06-02T10:01")));
        var urgent = MailDue.Of(wish, [Notice(1, urgent: true)], Has((1, false)), false, At("2026-06-02T10:02"))!;
        Assert.NotEqual(mail.Key, urgent.Key);
        // It is less urgent now: the person has it.
        Assert.Null(MailDue.Of(wish, [notice], Has((1, true)), false, At("2026-06-02T10:03")));
    }

    [Theory]
    [InlineData("21:59", true)]
    [InlineData("22:00", false)]
    [InlineData("05:59", false)]
    [InlineData("06:00", true)]
    public void In_the_quiet_hours_only_urgent_ones_come_by_themselves(string clock, bool usual)
    {
        var wish = Wish(MailRhythm.AtOnce);
        (wish.QuietFrom, wish.QuietTo) = (new TimeOnly(22, 0), new TimeOnly(6, 0));
        var time = At("2026-06-02T" + clock);
        Assert.Equal(usual, MailDue.Of(wish, [Notice(1)], none, false, time) is not null);
        Assert.NotNull(MailDue.Of(wish, [Notice(1, urgent: true)], none, false, time));
    }

    [Fact]
    public void The_days_mail_holds_all_that_ask_from_its_hour_on_once_a_day()
    {
        var wish = Wish(MailRhythm.Daily);
        wish.DailyAt = new TimeOnly(6, 0);
        Assert.Null(MailDue.Of(wish, [Notice(1, urgent: true)], none, false, At("2026-06-02T05:59")));
        MailNotice[] asking = [Notice(1), Notice(2, urgent: true), Notice(3)];
        var mail = MailDue.Of(wish, asking, Has((1, false)), false, At("2026-06-02T06:00"))!;
        Assert.True(mail.IsDaily);
        Assert.Equal([2L, 3], mail.New.Select(n => n.Notice.Id));
        Assert.Equal([1L], mail.Open.Select(n => n.Notice.Id));
        Assert.Null(MailDue.Of(wish, [Notice(4)], none, true, At("2026-06-02T06:01")));
        Assert.Null(MailDue.Of(wish, [], none, false, At("2026-06-03T06:00")));
        Assert.NotEqual(mail.Key, MailDue.Of(wish, [Notice(1)], Has((1, false)), false, At("2026-06-03T06:00"))!.Key);
    }

    [Fact]
    public void Who_wants_the_urgent_ones_at_once_has_the_others_in_the_days_mail()
    {
        var wish = Wish(MailRhythm.UrgentAtOnce);
        wish.DailyAt = new TimeOnly(6, 0);
        var single = MailDue.Of(wish, [Notice(1), Notice(2, urgent: true)], none, true, At("2026-06-02T10:00"))!;
        Assert.Equal([2L], single.New.Select(n => n.Notice.Id));
        var daily = MailDue.Of(wish, [Notice(1), Notice(2, urgent: true)], Has((2, true)), false, At("2026-06-03T06:00"))!;
        Assert.Equal([1L], daily.New.Select(n => n.Notice.Id));
        Assert.Equal([2L], daily.Open.Select(n => n.Notice.Id));
    }

    [Fact]
    public void What_was_raised_before_the_person_chose_comes_with_the_days_mail_of_the_next_day_only()
    {
        var wish = Wish(MailRhythm.AtOnce);
        wish.Since = At("2026-06-02T10:00").Now;
        Assert.Null(MailDue.Of(wish, [Notice(1)], none, false, At("2026-06-02T11:00")));
        wish.Rhythm = MailRhythm.Daily;
        wish.DailyAt = new TimeOnly(6, 0);
        Assert.Null(MailDue.Of(wish, [Notice(1)], none, false, At("2026-06-02T11:00")));
        Assert.NotNull(MailDue.Of(wish, [Notice(1)], none, false, At("2026-06-03T06:00")));
    }

    [Fact]
    public void Only_the_lines_and_kinds_that_were_chosen_come()
    {
        var wish = Wish(MailRhythm.AtOnce);
        wish.Lines = ["Press"];
        wish.Kinds = [NoticeKind.OilingDue];
        var all = new[]
        {
            Notice(1, line: "Dryer", kind: NoticeKind.OilingDue), Notice(2, line: "Press"),
            Notice(3, line: "Press", kind: NoticeKind.OilingDue),
        };
        Assert.Equal([3L], MailDue.Of(wish, all, none, false, At("2026-06-02T10:00"))!.New.Select(n => n.Notice.Id));
    }

    private static HashSet<(long, bool)> Has(params (long, bool)[] mailed) => [.. mailed];

    private static PlantTime At(string wall)
    {
        var local = DateTime.Parse(wall, System.Globalization.CultureInfo.InvariantCulture);
        return new PlantTime(new DateTimeOffset(local, zone.GetUtcOffset(local)), zone);
    }

    private static MailWishRow Wish(MailRhythm rhythm) =>
        new() { PersonId = 7, Address = "ina@mill.example", Rhythm = rhythm, Since = chosen };

    private static MailNotice Notice(
        long id, bool urgent = false, string line = "Press", NoticeKind kind = NoticeKind.LimitNear) => new(
        new NoticeRow
        {
            Id = id,
            ChainId = 1,
            Kind = kind,
            Urgent = urgent,
            Why = $"it wears",
            WhatToDo = $"look",
            RaisedAt = chosen.AddHours(1 + id),
        },
        new ChainRow { Name = "C1", Line = line, PitchMm = 25.4 }, null, null);
}
