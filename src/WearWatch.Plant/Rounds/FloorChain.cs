using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Lubrication;
using WearWatch.Parts;
using WearWatch.Rounds;
using WearWatch.Running;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Rounds;

/// <summary>A position's chain as the floor knows it: what a phone needs without signal, and what is to be done there.</summary>
public sealed record FloorChain
{
    /// <summary>The register's row.</summary>
    public required ChainRow Row { get; init; }

    /// <summary>Its newest forecast; null when there is none yet.</summary>
    public FloorForecast? Forecast { get; init; }

    /// <summary>Its newest reading that counts; null when it has none.</summary>
    public ReadingRow? Last { get; init; }

    /// <summary>When its links were last measured; null when they were not.</summary>
    public DateTimeOffset? LinksAt { get; init; }

    /// <summary>The names of the chains that run together with it.</summary>
    public IReadOnlyList<string> Mates { get; init; } = [];

    /// <summary>What was measured of its parts and its wheels, in the order in which it was told.</summary>
    public IReadOnlyList<PartReading> Parts { get; init; } = [];

    /// <summary>When the shutdown begins in which its swap is planned; null when none is.</summary>
    public DateTimeOffset? PlannedSwap { get; init; }

    /// <summary>When it was last measured, over pitches or by its links.</summary>
    public DateTimeOffset? MeasuredAt => new[] { Last?.TakenAt ?? Last?.ReceivedAt, LinksAt }.Max();

    /// <summary>The newest counter that was told; null when none was.</summary>
    public double? LastCounterH { get; init; }

    /// <summary>Whether its last reading is doubted, held back or waits.</summary>
    public bool LastDoesNotFit { get; init; }

    /// <summary>When it was last looked at, oiled and replaced, where that is recorded.</summary>
    public IReadOnlyDictionary<ChainEventKind, DateTimeOffset> LastAt { get; init; } =
        new Dictionary<ChainEventKind, DateTimeOffset>();

    /// <summary>What the plant says of its oiling.</summary>
    public OilTerms OilTerms { get; init; } = OilTerms.Default;

    /// <summary>How much oil was last applied by hand, in millilitres; null when that is not recorded.</summary>
    public double? LastOilMl { get; init; }

    /// <summary>How its lubrication is recorded, and what is usual there; null where none is foreseen.</summary>
    public FloorOil? Oil => FloorOil.Of(Row.ToCard(), OilPlan.Task, LastOilMl);

    /// <summary>Its place in the order that the plant has set for walking; null for none.</summary>
    public int? Place { get; init; }

    /// <summary>The limit that governs.</summary>
    public double LimitPercent => Forecast?.LimitPct ?? ReplacementLimit.For(Row.ToCard()).Percent;

    /// <summary>How many pitches to measure by tape.</summary>
    public SpanProposal Proposal => SpanProposal.For(
        SpanCase.Of(Row.ToCard(), ReplacementLimit.For(Row.ToCard()) with { Percent = LimitPercent }) with
        {
            ElongationPercent = Forecast?.ElongationPct,
            LastPitches = Last?.Pitches,
            LastPlace = Last?.Place ?? "",
        });

    /// <summary>The last reading's elongation in percent, as the gauge has it.</summary>
    public double? LastPercent => Last is { } last
        && Gauge.Measure(Row.PitchMm, last.Pitches, last.LengthMm, last.Tool, last.TemperatureC) is GaugeOutcome.Measured measured
            ? measured.Elongation.Percent
            : null;

    /// <summary>What is to be done here, when and why.</summary>
    public IEnumerable<RoundTask> Tasks(ProductionCalendar calendar, DateTimeOffset now)
    {
        yield return MeasuringDue.For(
            MeasuredAt, Forecast?.EarlyHours, Forecast?.MiddleHours, LastDoesNotFit, calendar, now);
        var oil = OilPlan;
        if (oil.Task != OilingTask.None)
            yield return new RoundTask(RoundTaskKind.Lubricate, Forecast?.NextOilingAt,
                oil.Task == OilingTask.CheckOiler ? Phrase.Of($"see that the lubricator works: {oil.Basis}") : oil.Basis);
        yield return InspectionDue.For(
            Latest(LastAt, ChainEventKind.Inspection, ChainEventKind.Replacement), Row.HoldsLoad, now);
    }

    /// <summary>Whether a task has been done since a moment, such as the beginning of the day.</summary>
    public bool IsDoneSince(RoundTaskKind task, DateTimeOffset moment) => task switch
    {
        RoundTaskKind.Measure => MeasuredAt >= moment,
        RoundTaskKind.Lubricate => Latest(LastAt, ChainEventKind.Oiling, Row.Lubrication == LubricationState.Auto
            ? ChainEventKind.Inspection
            : ChainEventKind.Oiling) >= moment,
        _ => Latest(LastAt, ChainEventKind.Inspection, ChainEventKind.Inspection) >= moment,
    };

    private OilingPlan OilPlan => OilingPlan.For(Row.ToCard(), OilTerms, isFirst: RunsOnMakersOil);

    private bool RunsOnMakersOil => LastAt.TryGetValue(ChainEventKind.Replacement, out var fitted)
        && (!LastAt.TryGetValue(ChainEventKind.Oiling, out var oiled) || oiled <= fitted);

    private static DateTimeOffset? Latest(
        IReadOnlyDictionary<ChainEventKind, DateTimeOffset> at, ChainEventKind one, ChainEventKind other) =>
        new[] { one, other }.Where(at.ContainsKey).Select(kind => (DateTimeOffset?)at[kind]).Max();
}
