using WearWatch.Chains;
using WearWatch.Phrases;
using WearWatch.Wear;

namespace WearWatch.Lifting.Examinations;

/// <summary>From all that was told of a lifting chain to its state.</summary>
/// <param name="facts">What was told.</param>
/// <param name="now">The moment for which it is asked.</param>
internal sealed class LiftingConclusion(LiftingFacts facts, DateTimeOffset now)
{
    /// <summary>Chains of a set are replaced in one standstill; so long it may take. Common practice.</summary>
    private static readonly TimeSpan Together = TimeSpan.FromDays(7);

    private readonly DateOnly? replacedOn = facts.ReplacedAt is { } at ? facts.DayOf(at) : null;

    public LiftingState State()
    {
        // Where it is and what it is part of stay when the chain is replaced; its certificate goes with it.
        var entry = facts.Entry is { } told && told.IsOfChainSince(facts.ReplacedAt) ? told : null;
        var interval = (facts.Entry ?? Unwritten()).Interval(facts.PlantsRegion);
        var steps = facts.Steps.Where(s => !(s.At < facts.ReplacedAt)).OrderBy(s => s.ToldAt).ToList();
        var examinations = facts.Examinations.Where(IsOfThisChain).OrderBy(e => e.On).ThenBy(e => e.ToldAt).ToList();
        var whole = examinations.LastOrDefault(e => e.IsWhole);
        var standing = StandingBy(steps);
        return new LiftingState
        {
            Standing = standing,
            Faults = [.. Faults(entry, standing, steps, examinations, interval).OrderBy(f => f.Kind)],
            HasCertificate = entry?.HasCertificate == true,
            LookedAt = facts.LookedAt,
            MeasuredAt = facts.MeasuredAt,
            ExaminedOn = whole?.On,
            ExaminationDue = Due(whole, interval),
            RemedyBy = OpenRemedy(examinations, steps)?.RemedyBy,
        };
    }

    private IEnumerable<LiftingFault> Faults(
        LiftingEntry? entry, LiftingStanding standing, List<LiftingStep> steps, List<Examination> examinations,
        ExaminationInterval interval)
    {
        if (standing == LiftingStanding.Disposed)
        {
            yield return new(
                LiftingFaultKind.Disposed, $"Discarded by {steps[^1].By} ({steps[^1].Reason}). Never to be used again.");
            yield break;
        }

        if (standing == LiftingStanding.Quarantined)
            yield return new(LiftingFaultKind.Quarantined, $"Quarantined by {steps[^1].By} ({steps[^1].Reason}).");
        foreach (var stop in StopFinding.Standing(facts.Card, facts.Found, facts.Steps, facts.ReplacedAt))
            yield return new(LiftingFaultKind.StopFinding,
                stop.Note.Length > 0
                    ? Phrase.Of($"{stop.Point.Ask}: found on {facts.DayOf(stop.Since)} by {stop.By} ({stop.Note}). "
                        + $"Out of use whatever the wear.")
                    : $"{stop.Point.Ask}: found on {facts.DayOf(stop.Since)} by {stop.By}. Out of use whatever the wear.");
        if (examinations.LastOrDefault(e => e.Result == ExaminationResult.OutOfUse) is { } report
            && !IsReleasedAfter(report, steps))
            yield return new(LiftingFaultKind.ReportOutOfUse,
                $"The report of {report.On} takes it out of use.");
        foreach (var fault in WearFaults()) yield return fault;
        foreach (var mate in facts.CondemnedMates)
            yield return new(LiftingFaultKind.SetCondemned,
                $"{mate} of its set is condemned: all chains of a set are replaced together, with their pins.");
        foreach (var (mate, at) in facts.ReplacedMates
            .Where(m => m.At - (facts.ReplacedAt ?? DateTimeOffset.MinValue) > Together))
            yield return new(LiftingFaultKind.SetMixed,
                $"{mate} of its set was replaced on {facts.DayOf(at)} and this one was not: all chains of a "
                + $"set are replaced together. A competent person examines both before further use.");
        if (examinations.Count == 0)
            yield return new(LiftingFaultKind.NeverExamined, $"No thorough examination of this chain is recorded.");
        if (examinations.LastOrDefault() is { IsWhole: false } part)
            yield return new(LiftingFaultKind.ExaminedInPart,
                $"The examination of {part.On} left points out. It says nothing of them.");
        if (entry?.HasCertificate != true)
            yield return new(LiftingFaultKind.NoCertificate, $"No certificate of this chain is recorded.");
        if (interval.Months is null)
            yield return new(LiftingFaultKind.NoInterval, $"No interval is set: say whose law counts, or the months. "
                + $"{interval.Rule.Words}");
    }

    private IEnumerable<LiftingFault> WearFaults()
    {
        if (facts.Wear == Condition.SwapNow)
            yield return new(LiftingFaultKind.WearLimit, $"The discard limit is reached, or may be.");
        else if (facts.OutOfUseBy <= now)
            yield return new(LiftingFaultKind.WearLimit,
                $"Its last day in use by wear was {facts.DayOf(facts.OutOfUseBy.Value)}.");
        if (!facts.ReadingInDoubt.IsEmpty) yield return new(LiftingFaultKind.ReadingInDoubt, facts.ReadingInDoubt);
        if (facts.Links == Condition.SwapNow)
            yield return new(LiftingFaultKind.LinkLimit,
                !facts.LinksSaid.IsEmpty ? facts.LinksSaid : $"A measure of its links has reached a limit.");
        if (facts.Wear == Condition.NotKnown && facts.Links == Condition.NotKnown)
            yield return new(
                LiftingFaultKind.WearNotKnown, $"Its wear was not measured yet, or cannot be judged from these data.");
    }

    /// <summary>On the day of the replacement only a report that was told after it tells of the new chain.</summary>
    private bool IsOfThisChain(Examination examination) =>
        replacedOn is null || examination.On > replacedOn
        || (examination.On == replacedOn && examination.ToldAt >= facts.ReplacedAt);

    private static LiftingStanding StandingBy(List<LiftingStep> steps)
    {
        if (steps.FindIndex(s => s.Kind == LiftingStepKind.Disposed) is >= 0 and var last)
        {
            steps.RemoveRange(last + 1, steps.Count - last - 1);
            return LiftingStanding.Disposed;
        }

        return steps.LastOrDefault()?.Kind == LiftingStepKind.Quarantined ? LiftingStanding.Quarantined : LiftingStanding.InUse;
    }

    /// <summary>The months after the last whole examination, or earlier where its report says so; never later.</summary>
    private static DateOnly? Due(Examination? whole, ExaminationInterval interval)
    {
        if (whole is null) return null;
        var byInterval = interval.Months is { } months ? whole.On.AddMonths(months) : (DateOnly?)null;
        return byInterval is { } day && whole.NextOn is { } told ? (told < day ? told : day) : byInterval ?? whole.NextOn;
    }

    /// <summary>The newest report with a date for a remedy that neither a release nor a later whole report has closed.</summary>
    private static Examination? OpenRemedy(List<Examination> examinations, List<LiftingStep> steps) =>
        examinations.LastOrDefault(e => e.IsWhole) is { Result: ExaminationResult.RemedyByDate } open
            && !IsReleasedAfter(open, steps)
            ? open
            : null;

    private static bool IsReleasedAfter(Examination report, List<LiftingStep> steps) =>
        steps.Any(s => s.Kind == LiftingStepKind.Released && s.ToldAt >= report.ToldAt);

    private static LiftingEntry Unwritten() =>
        new() { WrittenAt = default, Case = new IntervalCase(LawRegion.NotSet, LiftingUse.Hoist) };
}
