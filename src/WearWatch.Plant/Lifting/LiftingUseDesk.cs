using Microsoft.EntityFrameworkCore;
using WearWatch.Lifting.Examinations;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Settings;
using WearWatch.Plant.Tracking;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Lifting;

/// <summary>The one way in for quarantines, releases and disposals.</summary>
/// <remarks>Anybody takes a chain out of use; only a competent person with an appointment that holds brings it back.</remarks>
public sealed class LiftingUseDesk(IDbContextFactory<WearDb> database, ChainReview review, PlantClock plantClock)
{
    private const int LongestReason = 500;

    /// <summary>Takes a step: when it answers Taken, it is committed and the chain's state says so.</summary>
    public async Task<IntakeAnswer> TakeAsync(NewLiftingStep step, CancellationToken ct = default)
    {
        var time = await plantClock.NowAsync(ct);
        await using var db = await database.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        if (await LiftingChains.FindAsync(db, step.Chain, ct) is not { } chain) return LiftingChains.NoSuch(step.Chain);
        if (LiftingCardDesk.KeyFault(step.Key) is { } key) return new IntakeAnswer.Refused([key]);
        if (await db.LiftingSteps.SingleOrDefaultAsync(s => s.Key == step.Key, ct) is { } known)
            return (known.ChainId, known.Kind) == (chain.Id, step.Kind)
                ? new IntakeAnswer.Taken(known.Id, AlreadyKnown: true)
                : new IntakeAnswer.Refused([LiftingCardDesk.Used]);
        var faults = new List<Refusal>();
        if (step.By.Trim().Length == 0) faults.Add(new("by", $"Say who."));
        if (step.Reason.Trim().Length is 0 or > LongestReason)
            faults.Add(new("reason", $"Say why in 1 to {LongestReason} characters."));
        var reviewed = (await review.AssessAsync([chain.Id], ct)).Single();
        var rows = await LiftingRows.LoadAsync(db, [chain.Id], time.Zone, ct);
        var facts = rows.FactsOf(reviewed);
        var state = LiftingState.Of(facts, time.Now);
        if (state.Standing == LiftingStanding.Disposed)
            faults.Add(new("chain", $"It was discarded: nothing brings it back, and nothing more is done with it."));
        Appointment? appointment = null;
        if (step.Kind == LiftingStepKind.Released)
        {
            appointment = await LiftingChains.AppointmentAsync(db, step.By, facts.Card, time.Today, time.Zone, ct);
            faults.AddRange(ReleaseFaults(step, facts, state, appointment, time.Today));
        }

        if (faults.Count > 0) return new IntakeAnswer.Refused(faults);
        var row = new LiftingStepRow
        {
            ChainId = chain.Id,
            Key = step.Key,
            Kind = step.Kind,
            At = time.Now,
            By = step.By.Trim(),
            AppointmentId = appointment?.Id,
            Reason = step.Reason.Trim(),
            Closes = step.Kind == LiftingStepKind.Released ? step.Closes : [],
            ReceivedAt = time.Now,
        };
        db.LiftingSteps.Add(row);
        await review.CommitAsync(db, transaction, chain.Id, ct);
        var mates = await LiftingChains.MatesAsync(db, chain.Id, CancellationToken.None);
        await review.ReviewAsync(mates, null, CancellationToken.None);
        return new IntakeAnswer.Taken(row.Id, AlreadyKnown: false);
    }

    /// <summary>What stands against a release.</summary>
    private static IEnumerable<Refusal> ReleaseFaults(
        NewLiftingStep step, LiftingFacts facts, LiftingState state, Appointment? appointment, DateOnly today)
    {
        if (appointment is null)
            yield return new("by", $"{step.By.Trim()} has no appointment that holds today for this chain: only an appointed "
                + $"competent person releases it.");
        var faults = state.On(today).Select(f => f.Kind).ToHashSet();
        if (faults.Overlaps([LiftingFaultKind.WearLimit, LiftingFaultKind.LinkLimit, LiftingFaultKind.SetCondemned]))
            yield return new("chain", $"Its wear or its set has reached the limit, or may have: no release brings it back. The "
                + $"whole chain is replaced, with its set.");
        if (faults.Contains(LiftingFaultKind.ReadingInDoubt))
            yield return new("chain", $"A reading in doubt would take it out of use: confirm, correct or withdraw it first.");
        var standing = StopFinding.Standing(facts.Card, facts.Found, facts.Steps, facts.ReplacedAt).Select(s => s.Point.Point)
            .ToList();
        foreach (var none in step.Closes.Except(standing)) yield return new("closes", $"No finding at {none} stands.");
        if (standing.Count > 0 && !standing.All(step.Closes.Contains))
            yield return new(
                "closes", $"Name every finding that the release closes: {string.Join(", ", standing.Except(step.Closes))}. "
                + $"What is not closed keeps it out of use.");
        if (!faults.Overlaps([
            LiftingFaultKind.Quarantined, LiftingFaultKind.StopFinding, LiftingFaultKind.ReportOutOfUse,
            LiftingFaultKind.RemedyOverdue]) && state.RemedyBy is null)
            yield return new("chain", $"There is nothing to release: nobody has taken it out of use.");
    }
}
