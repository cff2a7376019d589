using WearWatch.Chains;
using WearWatch.Chains.Parts;
using WearWatch.Gauging;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Parts;

/// <summary>All that is concluded of the parts of one chain and its wheels. It can be computed again at any time.</summary>
/// <param name="Tracks">Each part that was ever measured, in the order of their kind's list.</param>
/// <param name="HoldsLoad">Whether the chain lifts or holds a load.</param>
/// <param name="Now">The moment for which it was concluded.</param>
public sealed record PartsState(IReadOnlyList<PartTrack> Tracks, bool HoldsLoad, DateTimeOffset Now)
{
    /// <summary>The parts that ask for attention, worst first.</summary>
    public IReadOnlyList<PartTrack> ToAttend =>
        [.. Tracks.Where(t => ConditionOf(t) is Condition.PlanASwap or Condition.SwapNow)
            .OrderByDescending(t => (int)ConditionOf(t))];

    /// <summary>How bad the chain's own parts are; a wheel and a slack ask for other work than a new chain.</summary>
    public Condition ChainCondition => Tracks.Where(t => t.Part.IsOfChain).Select(ConditionOf)
        .DefaultIfEmpty(Condition.NotKnown).MaxBy(c => (int)c);

    /// <summary>How bad the sprockets are.</summary>
    public Condition SprocketCondition => Tracks.Where(t => t.Part.IsOfSprocket).Select(ConditionOf)
        .DefaultIfEmpty(Condition.NotKnown).MaxBy(c => (int)c);

    /// <summary>
    /// How much its parts ask for a swap. Worn teeth stop no line, but the next swap takes chain and sprockets together.
    /// </summary>
    private Condition SwapCondition =>
        ChainCondition is not Condition.SwapNow && SprocketsAreWorn ? Condition.PlanASwap : ChainCondition;

    /// <summary>Whether the sprockets go with the chain: what is worn two thirds of the way does not last another one.</summary>
    public bool SprocketsAreWorn => SprocketCondition is Condition.PlanASwap or Condition.SwapNow;

    /// <summary>The date that nineteen of twenty such slacks reach later: then it is tensioned anew; or null.</summary>
    public DateTimeOffset? TensionFrom =>
        (Tracks.FirstOrDefault(t => t.Part is WearPart.Sag)?.Outlook as MeasureOutlook.Known)?.EarlyDate;

    /// <summary>
    /// The limits that its parts come to. Worn teeth are among them: chain and sprockets go together, and a new chain on worn
    /// teeth is soon an old one.
    /// </summary>
    public IEnumerable<LimitAhead> LimitsAhead => Tracks.Select(t => t.Ahead).OfType<LimitAhead>();

    /// <summary>The date that nineteen of twenty such chains outlast by their own parts; null where none is in sight.</summary>
    private DateTimeOffset? EarlyDate => Tracks.Where(t => t.Part.IsOfChain)
        .Min(t => (t.Outlook as MeasureOutlook.Known)?.EarlyDate);

    /// <summary>How bad a part is.</summary>
    public Condition ConditionOf(PartTrack track) => track.ConditionOf(HoldsLoad, Now);

    /// <summary>The chain's assessment with what its parts and its teeth say: the worst governs.</summary>
    /// <param name="assessment">The assessment by everything else.</param>
    public Assessment Govern(Assessment assessment)
    {
        var told = PartNotice.Of(this) is { } notice ? assessment with { Notices = [notice, .. assessment.Notices] } : assessment;
        // What holds a load is out of use at the first of its dates, whichever of its measures tells it.
        if (HoldsLoad)
        {
            var byParts = ChainCondition is Condition.SwapNow ? Now : EarlyDate;
            told = told with { OutOfUseBy = new[] { assessment.OutOfUseBy, byParts }.Min() };
        }

        return SwapCondition is Condition.PlanASwap or Condition.SwapNow
            ? told with { Condition = (Condition)Math.Max((int)SwapCondition, (int)assessment.Condition) }
            : told;
    }

    /// <summary>Concludes from what was told.</summary>
    /// <param name="card">The chain.</param>
    /// <param name="parts">What was measured of its parts, in the order in which it was taken.</param>
    /// <param name="readings">Its lengths: their counters date visits that have none.</param>
    /// <param name="events">Its events in the order in which they happened.</param>
    /// <param name="calendar">When its line runs.</param>
    /// <param name="now">The moment for which dates are given.</param>
    public static PartsState Of(
        ChainCard card, IReadOnlyList<PartReading> parts, IReadOnlyList<Reading> readings, IReadOnlyList<ChainEvent> events,
        ProductionCalendar calendar, DateTimeOffset now) =>
        new([.. parts.GroupBy(p => p.Part).OrderBy(g => g.Key)
            .Select(g => PartTrack.Of(card, g.Key, [.. g], readings, events, calendar, now))], card.HoldsLoad, now);
}
