using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Lifting.Examinations;
using WearWatch.Storage;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Plant.Tracking;

/// <summary>All rows that tell of lifting chains, and what is concluded from them.</summary>
public sealed class LiftingRows
{
    private readonly Dictionary<int, LiftingCardRow> cards;
    private readonly ILookup<int, InspectionRow> looks;
    private readonly ILookup<int, ExaminationRow> examinations;
    private readonly ILookup<int, LiftingStepRow> steps;
    private readonly Dictionary<int, DateTimeOffset?> measuredAt;
    private readonly LiftingSets sets;
    private readonly LawRegion region;
    private readonly TimeZoneInfo zone;

    private LiftingRows(
        List<LiftingCardRow> cards, List<InspectionRow> looks, List<ExaminationRow> examinations, List<LiftingStepRow> steps,
        Dictionary<int, DateTimeOffset?> measuredAt, LiftingSets sets, LawRegion region, TimeZoneInfo zone)
    {
        this.sets = sets;
        this.cards = cards.GroupBy(c => c.ChainId).ToDictionary(g => g.Key, g => g.Last());
        (this.looks, this.examinations) = (looks.ToLookup(l => l.ChainId), examinations.ToLookup(e => e.ChainId));
        (this.steps, this.measuredAt, this.region, this.zone) = (steps.ToLookup(s => s.ChainId), measuredAt, region, zone);
    }

    /// <summary>Loads what tells of chains.</summary>
    /// <param name="db">The plant's memory.</param>
    /// <param name="ids">The chains.</param>
    /// <param name="zone">The plant's time zone.</param>
    /// <param name="ct">Gives up.</param>
    public static async Task<LiftingRows> LoadAsync(
        WearDb db, IReadOnlyCollection<int> ids, TimeZoneInfo zone, CancellationToken ct)
    {
        var region = ids.Count == 0
            ? LawRegion.NotSet
            : await db.Plants.OrderBy(p => p.Id).Select(p => p.LawRegion).FirstOrDefaultAsync(ct);
        return new LiftingRows(
            await Of(db.LiftingCards.Where(c => EF.Parameter(ids).Contains(c.ChainId)).OrderBy(c => c.Id)),
            await Of(db.Looks.Where(l => EF.Parameter(ids).Contains(l.ChainId)).OrderBy(l => l.Id)),
            await Of(db.Examinations.Where(e => EF.Parameter(ids).Contains(e.ChainId)).OrderBy(e => e.Id)),
            await Of(db.LiftingSteps.Where(s => EF.Parameter(ids).Contains(s.ChainId)).OrderBy(s => s.Id)),
            await db.LinkMeasures.Where(m => EF.Parameter(ids).Contains(m.ChainId)).GroupBy(m => m.ChainId)
                .ToDictionaryAsync(g => g.Key, g => g.Max(m => m.TakenAt), ct),
            await LiftingSets.LoadAsync(db, ids, ct), region, zone);

        Task<List<T>> Of<T>(IQueryable<T> rows)
            where T : class => ids.Count == 0 ? Task.FromResult(new List<T>()) : rows.AsNoTracking().ToListAsync(ct);
    }

    /// <summary>The other chains of a chain's set.</summary>
    public IEnumerable<int> MatesOf(int id) => sets.MatesOf(id).Select(mate => mate.Id);

    /// <summary>Those of them that were not replaced since this one was: what that means for them is concluded anew.</summary>
    public IEnumerable<int> OlderMatesOf(int id, DateTimeOffset? replacedAt) =>
        sets.MatesOf(id).Where(mate => replacedAt > (mate.ReplacedAt ?? DateTimeOffset.MinValue)).Select(mate => mate.Id);

    /// <summary>What a reviewed chain's state is concluded from.</summary>
    public LiftingFacts FactsOf(ReviewedChain chain)
    {
        var (id, raw) = (chain.Raw.Id, chain.Raw);
        var reports = StandingRows.Standing([.. examinations[id]]);
        var replaced = raw.EventRows.LastOrDefault(e => e.Kind == ChainEventKind.Replacement);
        return new LiftingFacts
        {
            Card = raw.Card,
            Entry = cards.GetValueOrDefault(id)?.ToEntry(),
            PlantsRegion = region,
            ReplacedAt = replaced is null ? null : replaced.At ?? replaced.ReceivedAt,
            Found = [.. looks[id].SelectMany(Findings), .. reports.SelectMany(Findings)],
            Examinations = [.. reports.Select(e => e.ToExamination())],
            Steps = [.. steps[id].Select(s => s.ToStep())],
            Wear = chain.WearCondition,
            OutOfUseBy = chain.Assessment.OutOfUseBy,
            Links = chain.Links?.Condition ?? Condition.NotKnown,
            LinksSaid = chain.Links?.Sentence ?? Phrase.None,
            ReadingInDoubt = chain.Assessment.ReadingInDoubt,
            CondemnedMates = [.. sets.MatesOf(id).Where(m => m.IsCondemned).Select(m => m.Name)],
            ReplacedMates = [.. sets.MatesOf(id).Where(m => m.ReplacedAt is not null).Select(m => (m.Name, m.ReplacedAt!.Value))],
            LookedAt = looks[id].Max(l => (DateTimeOffset?)l.TakenAt),
            MeasuredAt = new[] { raw.ReadingRows.Max(r => r.TakenAt), measuredAt.GetValueOrDefault(id) }.Max(),
            Zone = zone,
        };
    }

    private static IEnumerable<LiftingFinding> Findings(InspectionRow look) => look.Findings.Where(f => f.Found)
        .Select(f => new LiftingFinding(f.Point, look.TakenAt, look.ReceivedAt, look.ToldBy, f.Note));

    /// <summary>A report has a day, not a time: what it found counts as found at the day's end.</summary>
    private IEnumerable<LiftingFinding> Findings(ExaminationRow report)
    {
        var evening = report.On.AddDays(1).ToDateTime(default);
        var at = new DateTimeOffset(evening, zone.GetUtcOffset(evening)).AddSeconds(-1);
        return report.Points.Where(p => p.Outcome == PointOutcome.Found)
            .Select(p => new LiftingFinding(p.Point, at, report.ReceivedAt, report.Examiner, p.Note));
    }
}
