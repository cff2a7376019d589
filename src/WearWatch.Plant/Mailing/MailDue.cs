using System.Globalization;
using WearWatch.Plant.Settings;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Mailing;

/// <summary>A mail that is to be written to a person now.</summary>
/// <param name="Key">What it is: the same however often it is asked for.</param>
/// <param name="New">Notices that the person has in no mail yet, the urgent ones first.</param>
/// <param name="Open">Those that the person has already and that ask still.</param>
/// <param name="IsDaily">Whether it is the day's mail.</param>
public sealed record MailDue(string Key, IReadOnlyList<MailNotice> New, IReadOnlyList<MailNotice> Open, bool IsDaily)
{
    /// <summary>
    /// What is due of a person's wishes. Outside of the quiet hours a notice that was raised since the person chose is mailed
    /// by itself; urgent ones in the quiet hours too. The day's mail holds all that ask, and is not written where none does.
    /// </summary>
    /// <param name="wish">What the person wants.</param>
    /// <param name="asking">The notices that ask for a person.</param>
    /// <param name="mailed">Those that the person has in a mail, and whether they were urgent then.</param>
    /// <param name="isDailyWritten">Whether today's mail was written already.</param>
    /// <param name="time">The plant's time.</param>
    public static MailDue? Of(
        MailWishRow wish, IReadOnlyList<MailNotice> asking, IReadOnlySet<(long Id, bool Urgent)> mailed, bool isDailyWritten,
        PlantTime time)
    {
        var wanted = asking.Where(n => Wants(wish, n)).OrderByDescending(n => n.Notice.Urgent).ThenBy(n => n.Notice.RaisedAt)
            .ThenBy(n => n.Notice.Id).ToList();
        var fresh = wanted.Where(n => !Has(mailed, n)).ToList();
        if (!isDailyWritten && wanted.Count > 0 && IsTimeForDaily(wish, time))
            return new MailDue(DailyKey(wish, time), fresh, [.. wanted.Except(fresh)], IsDaily: true);
        var single = fresh.Where(n => n.Notice.RaisedAt >= wish.Since && ComesByItself(wish, n, time)).ToList();
        return single.Count == 0 ? null : new MailDue(SingleKey(wish, single[0]), single, [], IsDaily: false);
    }

    /// <summary>What the day's mail to a person is called.</summary>
    public static string DailyKey(MailWishRow wish, PlantTime time) =>
        string.Create(CultureInfo.InvariantCulture, $"{wish.PersonId} day {time.Today:yyyy-MM-dd}");

    private static string SingleKey(MailWishRow wish, MailNotice first) => string.Create(
        CultureInfo.InvariantCulture, $"{wish.PersonId} notice {first.Notice.Id}{(first.Notice.Urgent ? " urgent" : "")}");

    private static bool Wants(MailWishRow wish, MailNotice notice) =>
        (wish.Lines.Count == 0 || wish.Lines.Contains(notice.Chain.Line))
        && (wish.Kinds.Count == 0 || wish.Kinds.Contains(notice.Notice.Kind));

    private static bool Has(IReadOnlySet<(long Id, bool Urgent)> mailed, MailNotice notice) =>
        mailed.Contains((notice.Notice.Id, true)) || (!notice.Notice.Urgent && mailed.Contains((notice.Notice.Id, false)));

    private static bool IsTimeForDaily(MailWishRow wish, PlantTime time) =>
        wish.Rhythm is MailRhythm.Daily or MailRhythm.UrgentAtOnce
        && time.Now >= time.At(time.Today, wish.DailyAt) && time.At(time.Today, wish.DailyAt) >= wish.Since;

    private static bool ComesByItself(MailWishRow wish, MailNotice notice, PlantTime time) => wish.Rhythm switch
    {
        MailRhythm.AtOnce => notice.Notice.Urgent || !IsQuiet(wish, time),
        MailRhythm.UrgentAtOnce => notice.Notice.Urgent,
        _ => false,
    };

    private static bool IsQuiet(MailWishRow wish, PlantTime time) =>
        wish is { QuietFrom: { } from, QuietTo: { } to } && time.TimeOfDay.IsBetween(from, to);
}
