using WearWatch.Dashboard.Engineer.Costs;
using WearWatch.Dashboard.Engineer.Record;
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Lives;
using WearWatch.Plant.Books;
using WearWatch.Plant.Costs;
using WearWatch.Plant.Planning;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Engineer.Report;

/// <summary>Writes the report of a month from its facts.</summary>
public static class MonthWriting
{
    private const int MostListed = 10;
    private const int MostNamed = 6;

    /// <summary>The parts in the order in which a manager reads them.</summary>
    public static IReadOnlyList<ReportPart> Parts(MonthFacts facts)
    {
        var (month, year) = (facts.Costs(facts.Period), facts.Costs(facts.YearBefore));
        return
        [
            InShort(facts, month, year), Decide(facts), .. MonthLifting.Parts(facts.Lifting), Due(facts), Changed(facts),
            Cost(facts, month, year), Held(facts),
        ];
    }

    private static ReportPart InShort(MonthFacts facts, CostStatement month, CostStatement year)
    {
        int Of(Condition condition) => facts.Conditions.GetValueOrDefault(ConditionWords.Of(condition, holdsLoad: false));
        var lifting = ConditionWords.MostUrgentFirst.Select(c => ConditionWords.Of(c, holdsLoad: true))
            .Select(words => (words.Words, Count: facts.Conditions.GetValueOrDefault(words))).Where(c => c.Count > 0).ToList();
        var others = facts.Conditions.Where(c => !c.Key.HoldsLoad).Sum(c => c.Value);
        return new(T["In short"],
        [
            T[$"Of {EngineerWords.Chains(others)} {Of(Condition.WithinLimit):#,0} are within their limit, for "
                + $"{Of(Condition.PlanASwap):#,0} a swap is to be planned, {Of(Condition.SwapNow):#,0} should be "
                + $"swapped now, and of {Of(Condition.NotKnown):#,0} nothing is known."],
            .. lifting.Count == 0 ? Array.Empty<string>() :
            [
                T[$"Of {EngineerWords.Chains(lifting.Sum(c => c.Count))} that lift or hold a load: "
                    + $"{Phrase.Join("; ", lifting.Select(c => Phrase.Of($"{c.Count:#,0} {c.Words}")))}."],
            ],
            month.Swaps == 0
                ? T["No chain was swapped in the month."]
                : T[Phrase.Counted(
                    month.Swaps,
                    $"{month.Swaps:#,0} chain was swapped in the month, {month.Broke:#,0} of them after a breakdown.",
                    $"{month.Swaps:#,0} chains were swapped in the month, {month.Broke:#,0} of them after a breakdown.")],
            year.Total > 0
                ? T[$"Chains cost {CostWords.Money(month.Total, facts.Terms)} in the month; a month of the year before cost "
                    + $"{CostWords.Money(year.Total / 12, facts.Terms)} a month on average."]
                : T[$"Chains cost {CostWords.Money(month.Total, facts.Terms)} in the month; of the year before nothing is "
                    + $"known."],
        ]);
    }

    private static ReportPart Decide(MonthFacts facts)
    {
        var open = facts.Due.Where(d => d.PlannedFor is null).ToList();
        var now = open.Where(d => d.Condition is { Condition: Condition.SwapNow, HoldsLoad: false }).ToList();
        var stop = facts.Due.Where(d => d.Condition is { Condition: Condition.SwapNow, HoldsLoad: true }).ToList();
        List<string> decide = [];
        if (stop.Count > 0)
            decide.Add(T[$"Take out of use now, until a competent person has judged: "
                + $"{Names(stop.Select(d => Phrase.Verbatim(d.Name)))}."]);
        var left = facts.Due.Where(d => d.IsLeft).Except(stop).ToList();
        if (left.Count > 0)
        {
            decide.Add(T[$"Out of use unless a swap before is planned: "
                + $"{Names(left.Select(d => Phrase.Of($"{d.Name} from {facts.Time.DateOf(d.OutOfUseBy!.Value)}")))}."]);
        }

        if (now.Count > 0)
            decide.Add(T[$"When to swap {Names(now.Select(d => Phrase.Verbatim(d.Name)))}: past the limit, and in no plan."]);
        open.RemoveAll(d => d.IsLeft || d.Condition is { Condition: Condition.SwapNow });
        if (open.Count > 0) decide.Add(
            T[Phrase.Counted(open.Count, $"Whether to plan {open.Count:#,0} more chain whose limit may come within eight weeks.",
                $"Whether to plan {open.Count:#,0} more chains whose limit may come within eight weeks.")]);
        if (facts.Unjudged > 0) decide.Add(T[Phrase.Counted(
            facts.Unjudged, $"Whether {facts.Unjudged:#,0} alarm of faster wear is real: somebody has to look.",
            $"Whether {facts.Unjudged:#,0} alarms of faster wear are real: somebody has to look.")]);
        if (facts.Waiting > 0)
            decide.Add(T[Phrase.Counted(
                facts.Waiting, $"What to make of {facts.Waiting:#,0} reading on hold.",
                $"What to make of {facts.Waiting:#,0} readings on hold.")]);
        decide.AddRange(facts.PlantNotices.Select(n => T[$"{n.Why} {n.WhatToDo}"]));
        if (decide.Count == 0) decide.Add(T["Nothing waits for a decision."]);
        return new(T["What to decide"], decide);
    }

    private static ReportPart Due(MonthFacts facts) => facts.Due.Count == 0
        ? new(T["What comes due"], [T["No limit comes within eight weeks."]])
        : new(
            T["What comes due"],
            [T[facts.Due.Count > MostListed
                ? Phrase.Of($"{facts.Due.Count:#,0} chains may reach the limit within eight weeks or have passed it; the "
                    + $"{MostListed} most urgent:")
                : Phrase.Counted(
                    facts.Due.Count, $"{facts.Due.Count:#,0} chain may reach the limit within eight weeks or has passed it:",
                    $"{facts.Due.Count:#,0} chains may reach the limit within eight weeks or have passed it:")]],
            new ReportTable(
                [T["Chain"], T["Line"], T["Condition"], T["Early date"], T["Swap planned for"]],
                [
                    .. facts.Due.Take(MostListed).Select(d => new[]
                    {
                        d.Name, d.Line, T[$"{d.Condition.Words}"], d.EarlyDate is { } early
                            ? facts.Time.Day(early)
                            : Show.Nothing,
                        d.IsLeft ? T[HardDateWords.OutOfUse(d.OutOfUseBy!.Value, facts.Time)]
                            : d.PlannedFor is { } start ? facts.Time.Day(start)
                            : T["not planned"],
                    })
                ],
                Words: true));

    private static ReportPart Changed(MonthFacts facts)
    {
        List<string> said = [];
        var byKind = facts.Raised.CountBy(r => r.Notice.Kind).OrderByDescending(k => k.Value).ToList();
        said.Add(byKind.Count == 0
            ? T["No notice was raised in the month."]
            : T[Phrase.Counted(
                facts.Raised.Count, $"{facts.Raised.Count:#,0} notice was raised: {Kinds(byKind)}.",
                $"{facts.Raised.Count:#,0} notices were raised: {Kinds(byKind)}.")]);
        var faster = facts.Raised.Where(r => r.Notice.Kind == NoticeKind.RateHasRisen).ToList();
        if (faster.Count > 0) said.Add(T[$"Began to wear faster: {Names(faster.Select(r => Phrase.Verbatim(r.Chain)))}."]);
        return new(T["What changed"], said);
    }

    private static Phrase Kinds(IEnumerable<KeyValuePair<NoticeKind, int>> byKind) =>
        Phrase.Join(", ", byKind.Select(k => Phrase.Of($"{TradeWords.Of(k.Key)} {k.Value:#,0}")));

    private static ReportPart Cost(MonthFacts facts, CostStatement month, CostStatement year)
    {
        string[] Row(string what, Func<CostStatement, double> of) =>
            [what, CostWords.Figure(of(month)), CostWords.Figure(of(year) / 12)];
        List<string> said = [];
        if (month.UnusedPrice > 0)
            said.Add(T[$"Of the chains' price {CostWords.Money(month.UnusedPrice, facts.Terms)} was life thrown away "
                + $"({month.UnusedHours:#,0} h of running)."]);
        if (month.Early > 0) said.Add(T[CostWords.Spared(month, facts.Terms)]);
        return new(T["What it cost"], said, new ReportTable(
            [T[$"In {facts.Terms.Costs.Money}"], T["Month"], T["Mean month of the year before"]],
            [Row(T["Chains and sprockets"], s => s.Chains + s.Sprockets), Row(T["Stops for swaps"], s => s.Stops),
                Row(T["Breakdowns"], s => s.Breakdowns), Row(T["Total"], s => s.Total)]), CostPicture.Of(facts));
    }

    private static ReportPart Held(MonthFacts facts)
    {
        TrackRecord In(CostPeriod period) => TrackRecord.Of(
            [.. facts.Record.Where(f => f.AtShare == SpreadCheck.AtShare && f.EndedAt is { } ended && period.Holds(ended))
                .Select(f => f.Score)]);
        var (month, year) = (In(facts.Period), In(facts.YearBefore));
        if (month.Count + year.Count == 0)
            return new(
                T["Which forecasts held"], [T["No chain with a forecast from half of its life has reached its limit yet."]]);
        string[] Row(string what, TrackRecord record) =>
        [
            what, Show.Count(record.Count), EngineerWords.Share(record.Held90.Fraction),
            EngineerWords.Share(record.Late.Fraction), EngineerWords.Share(record.MedianAbsoluteError),
        ];
        return new(
            T["Which forecasts held"],
            [T[$"Forecasts at half of life, of lives that ended. The 90 % interval "
                + $"should hold nine of ten: {RecordView.Verdict(year.Held90, 0.9)}."],
                T["Each mark is a life with its interval. On the dashed line: as forecast; below it: sooner. Squares: outside."]],
            new ReportTable(
                [T["Lives that ended"], T["Forecasts"], T["90 % interval held"], T["Late warnings"], T["Typical error"]],
                [Row(T["in the month"], month), Row(T["in the year before"], year)]), ForecastPicture.Of(facts));
    }

    private static Phrase Names(IEnumerable<Phrase> names)
    {
        List<Phrase> all = [.. names.Distinct()];
        return all.Count <= MostNamed
            ? Phrase.Join(", ", all)
            : $"{Phrase.Join(", ", all.Take(MostNamed))} and {all.Count - MostNamed} more";
    }
}
