using WearWatch.Inspections;
using WearWatch.Lifting.Examinations;
using WearWatch.Lubrication;
using WearWatch.Signals.Running;
using WearWatch.Storage;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Plant.Tracking;

/// <summary>Opens, updates and ends the notices of a chain.</summary>
internal static class NoticeKeeping
{
    /// <summary>What asks for attention: the assessment's notices, oil that is due, readings that wait, lifting.</summary>
    private static IEnumerable<Notice> Of(ReviewedChain chain, DateOnly today, TimeZoneInfo zone)
    {
        if (chain.Lifting is { } lifting)
            foreach (var notice in LiftingNotices.Of(lifting, today)) yield return notice;
        var all = chain.Assessment.Notices;
        foreach (var notice in all) yield return notice;
        if (chain.Oiling.IsDue && !all.Any(n => n.Kind == NoticeKind.OilingDue))
            yield return new Notice(NoticeKind.OilingDue, Urgent: false, chain.Oiling.Basis,
                chain.Oiling.Task == OilingTask.CheckOiler ? Phrase.Of($"Inspect the lubricator and record it.")
                        : $"Lubricate the chain and record it.");
        if (chain.Group?.ToNotice() is { } unlike) yield return unlike;
        if (chain.Lubricator is { } silent) yield return LubricatorSilent(silent);
        if (chain.CounterJump is { } jump) yield return CounterJumped(jump, zone);
        if (InspectionNotice.Of(chain.Raw.Card, chain.Raw.Looks, chain.Raw.Events) is { } found) yield return found;
        if (chain.Raw.WaitingRows is [var first, ..] && !all.Any(n => n.Kind == NoticeKind.ReadingHeldBack))
            yield return new Notice(NoticeKind.ReadingHeldBack, Urgent: false, first.WhyWaiting,
                $"Say yes to the reading, correct it or withdraw it.");
    }

    private static Notice LubricatorSilent(LubricatorWatch silent) => new(
        NoticeKind.LubricatorSilent, Urgent: false,
        Phrase.Join(" ",
        [
            $"The automatic lubricator gave no oil for {silent.HoursSinceLast:0} running hours; it usually gives some every "
                + $"{silent.UsualHours:0} h.",
            silent.IsBlocked ? Phrase.Of($"Its pulses come, but with no oil: the line is blocked, or it is empty.")
                : $"No pulse comes: it is empty, switched off or not heard.",
        ]),
        silent.IsBlocked
            ? Phrase.Of($"Clear the line and fill it; the next pulse with oil ends this notice.")
            : $"Fill it and see that it runs; the next pulse ends this notice.");

    private static Notice CounterJumped(CounterJump jump, TimeZoneInfo zone) => new(
        NoticeKind.CounterJumped, Urgent: false,
        $"The counter from the controller jumped or began again on {TimeZoneInfo.ConvertTime(jump.Day, zone)}. "
            + $"The calendar stands in for its hours.",
        $"Compare it with the hour counter on site. If that was changed, record the change.");

    /// <summary>Brings the kept notices of a chain in line.</summary>
    /// <param name="db">Where new ones are added.</param>
    /// <param name="chain">What the review concluded.</param>
    /// <param name="kept">The chain's open notices and those that a person judged.</param>
    /// <param name="zone">The plant's time zone.</param>
    /// <param name="now">The moment of the review.</param>
    /// <returns>Whether anything changed.</returns>
    public static bool Keep(
        WearDb db, ReviewedChain chain, IReadOnlyCollection<NoticeRow> kept, TimeZoneInfo zone, DateTimeOffset now)
    {
        var today = DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(now, zone).DateTime);
        var asked = Of(chain, today, zone).ToDictionary(n => n.Kind);
        var changed = false;
        foreach (var open in kept.Where(n => n.EndedAt is null))
        {
            var wasUrgent = open.Urgent;
            if (!asked.Remove(open.Kind, out var notice)) (open.EndedAt, changed) = (now, true);
            else changed |= Update(open, notice) | Wake(db, open, chain.Raw.Card.HoldsLoad, wasUrgent, now);
        }

        foreach (var notice in asked.Values.Where(n => !IsSettled(n, chain, kept)))
        {
            changed = true;
            db.Notices.Add(new NoticeRow
            {
                ChainId = chain.Raw.Id,
                Kind = notice.Kind,
                Urgent = notice.Urgent,
                Why = notice.Why,
                WhatToDo = notice.WhatToDo,
                RaisedAt = now,
            });
        }

        return changed;
    }

    private static bool Update(NoticeRow open, Notice notice)
    {
        if ((open.Urgent, open.Why, open.WhatToDo) == (notice.Urgent, notice.Why, notice.WhatToDo)) return false;
        (open.Urgent, open.Why, open.WhatToDo) = (notice.Urgent, notice.Why, notice.WhatToDo);
        return true;
    }

    /// <summary>
    /// What became urgent, and what takes a chain that lifts out of use, asks again whatever a person said of it.
    /// </summary>
    private static bool Wake(WearDb db, NoticeRow open, bool holdsLoad, bool wasUrgent, DateTimeOffset now)
    {
        var hasWorsened = open.Urgent && !wasUrgent;
        var mayStayQuiet = !hasWorsened && new NoticeAttention(open.Kind, open.Urgent, holdsLoad).MayBeQuiet;
        if (!open.IsQuiet(now) || mayStayQuiet) return false;
        (open.Acknowledged, open.SnoozedUntil) = (false, null);
        db.NoticeSteps.Add(new NoticeStepRow { NoticeId = open.Id, Kind = NoticeStepKind.Worsened, At = now });
        return true;
    }

    /// <summary>
    /// Whether a person has closed such a notice and nothing was told of the chain since: it would only come back.
    /// </summary>
    private static bool IsSettled(Notice notice, ReviewedChain chain, IReadOnlyCollection<NoticeRow> kept) =>
        !LiftingNotices.IsOne(notice.Kind) && kept.Any(n =>
            n.Kind == notice.Kind && n.JudgedReal is not null && n.EndedAt >= (chain.Raw.LastToldAt ?? DateTimeOffset.MinValue)
            && (n.Urgent || !notice.Urgent));
}
