using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Intake;
using WearWatch.Plant.People;
using WearWatch.Plant.Settings;
using WearWatch.Storage;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Plant.Notices;

/// <summary>Takes what people do about a notice: acknowledge, assign, put off, comment, let ask again.</summary>
public sealed class NoticeStepDesk(IDbContextFactory<WearDb> databases, PlantNews news, PlantClock clock)
{
    /// <summary>A longer comment belongs into a report.</summary>
    public const int LongestComment = 1000;

    /// <summary>What is put off for longer is not put off but forgotten; common practice.</summary>
    public const int MostDays = 366;

    private const PersonRoles Deals = PersonRoles.Technician | PersonRoles.Planner | PersonRoles.Engineer;

    /// <summary>To whom a notice can be given, by name; empty while nobody is set up.</summary>
    public async Task<IReadOnlyList<string>> PeopleAsync(CancellationToken ct)
    {
        var time = await clock.NowAsync(ct);
        await using var db = await databases.CreateDbContextAsync(ct);
        return await PeopleAsync(db, time.Now, ct);
    }

    /// <summary>Takes a step. Sent again under the same key it changes nothing.</summary>
    /// <returns>Whether it was taken; null when there is no such notice.</returns>
    public async Task<IntakeAnswer?> TakeAsync(long noticeId, NewNoticeStep step, CancellationToken ct)
    {
        var time = await clock.NowAsync(ct);
        await using var db = await databases.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        if (await db.NoticeSteps.SingleOrDefaultAsync(s => s.Key == step.Key, ct) is { } known)
        {
            return known.NoticeId == noticeId && known.Kind == step.Kind
                ? new IntakeAnswer.Taken(known.Id, AlreadyKnown: true)
                : Refused("key", $"This key was used for something else.");
        }

        if (await db.Notices.FindAsync([noticeId], ct) is not { } notice) return null;
        var chain = await db.Chains.SingleAsync(c => c.Id == notice.ChainId, ct);
        var mayBeQuiet = new NoticeAttention(
            notice.Kind, notice.Urgent, chain.Family.Lifts(chain.Lifts, chain.NotLiftingReason != "")).MayBeQuiet;
        if (await FaultAsync(db, notice, step, mayBeQuiet, time, ct) is { } refused) return refused;
        Change(notice, step, mayBeQuiet, time);
        var row = new NoticeStepRow
        {
            NoticeId = noticeId,
            Key = step.Key,
            Kind = step.Kind,
            At = time.Now,
            By = step.By,
            Person = step.Person.Trim(),
            Until = step.Kind == NoticeStepKind.Snoozed ? step.Until : null,
            Comment = step.Comment.Trim(),
        };
        db.NoticeSteps.Add(row);
        await db.SaveChangesAsync(ct);
        await transaction.CommitAsync(ct);
        news.Tell([notice.ChainId]);
        return new IntakeAnswer.Taken(row.Id, AlreadyKnown: false);
    }

    /// <summary>How the notice stands after a step.</summary>
    /// <remarks>
    /// That a person has seen that a lifting chain is to be taken out of use is kept as a step; the notice asks on.
    /// </remarks>
    private static void Change(NoticeRow notice, NewNoticeStep step, bool mayBeQuiet, PlantTime time)
    {
        switch (step.Kind)
        {
            case NoticeStepKind.Acknowledged:
                (notice.Acknowledged, notice.SnoozedUntil) = (mayBeQuiet, null);
                break;
            case NoticeStepKind.Snoozed:
                (notice.Acknowledged, notice.SnoozedUntil) = (false, time.StartOf(step.Until!.Value));
                break;
            case NoticeStepKind.Woken:
                (notice.Acknowledged, notice.SnoozedUntil) = (false, null);
                break;
            case NoticeStepKind.Assigned:
                notice.AssignedTo = step.Person.Trim();
                break;
        }
    }

    private static async Task<IntakeAnswer?> FaultAsync(
        WearDb db, NoticeRow notice, NewNoticeStep step, bool mayBeQuiet, PlantTime time, CancellationToken ct) =>
        step.Kind switch
        {
            _ when notice.EndedAt is not null => Refused("notice", $"This notice has ended."),
            _ when step.Comment.Length > LongestComment =>
                Refused("comment", $"A comment has at most {LongestComment:#,0} characters."),
            NoticeStepKind.Worsened => Refused("step", $"That a notice became urgent is for the program to say."),
            NoticeStepKind.Commented when step.Comment.Trim().Length == 0 => Refused("comment", $"Write the comment."),
            NoticeStepKind.Snoozed when !mayBeQuiet => Refused("step",
                $"A lifting chain that is to be taken out of use is not snoozed: a competent person judges it."),
            NoticeStepKind.Snoozed when step.Until is not { } until || until <= time.Today
                || until.DayNumber > time.Today.DayNumber + MostDays =>
                Refused("until", $"Give a day after today, at most {MostDays} days ahead."),
            NoticeStepKind.Assigned when await FaultOfPersonAsync(db, step.Person.Trim(), time.Now, ct) is { } fault =>
                Refused("person", fault),
            _ => null,
        };

    private static async Task<Phrase?> FaultOfPersonAsync(
        WearDb db, string person, DateTimeOffset now, CancellationToken ct) =>
        person.Length == 0 ? null
        : await db.People.AnyAsync(ct)
            ? (await PeopleAsync(db, now, ct)).Contains(person)
                ? null
                : Phrase.Of($"Nobody of this name deals with chains here.")
            : PersonName.Fault(person);

    private static Task<List<string>> PeopleAsync(WearDb db, DateTimeOffset now, CancellationToken ct) => db.People
        .Where(PersonRow.CanComeIn(now)).Where(p => (p.Roles & Deals) != PersonRoles.None).OrderBy(p => p.NormalizedUserName)
        .Select(p => p.UserName!).ToListAsync(ct);

    private static IntakeAnswer.Refused Refused(string field, Phrase why) => new([new(field, why)]);
}
