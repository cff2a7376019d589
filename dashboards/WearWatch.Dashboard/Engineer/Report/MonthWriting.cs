using System.Globalization;
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
        return new("In short",
        [
            $"Of {Show.Count(others, "chain")} {Show.Count(Of(Condition.WithinLimit))} are within their limit, for "
                + $"{Show.Count(Of(Condition.PlanASwap))} a swap is to be planned, {Show.Count(Of(Condition.SwapNow))} should be "
                + $"swapped now, and of {Show.Count(Of(Condition.NotKnown))} nothing is known.",
            .. lifting.Count == 0 ? Array.Empty<string>() :
            [
                $"Of {Show.Count(lifting.Sum(c => c.Count), "chain")} that lift or hold a load: "
                    + string.Join("; ", lifting.Select(c => $"{Show.Count(c.Count)} {c.Words}")) + ".",
            ],
            month.Swaps == 0
                ? "No chain was swapped in the month."
                : $"{Show.Count(month.Swaps, "chain")} {(month.Swaps == 1 ? "was" : "were")} swapped in the month, "
                    + $"{Show.Count(month.Broke)} of them after a breakdown.",
            year.Total > 0
                ? $"Chains cost {CostWords.Money(month.Total, facts.Terms)} in the month; a month of the year before cost "
                    + $"{CostWords.Money(year.Total / 12, facts.Terms)} a month on average."
                : $"Chains cost {CostWords.Money(month.Total, facts.Terms)} in the month; of the year before nothing is known.",
        ]);
    }

    private static ReportPart Decide(MonthFacts facts)
    {
        var open = facts.Due.Where(d => d.PlannedFor is null).ToList();
        var now = open.Where(d => d.Condition is { Condition: Condition.SwapNow, HoldsLoad: false }).ToList();
        var stop = facts.Due.Where(d => d.Condition is { Condition: Condition.SwapNow, HoldsLoad: true }).ToList();
        List<string> decide = [];
        if (stop.Count > 0)
            decide.Add($"Take out of use now, until a competent person has judged: {Names(stop.Select(d => d.Name))}.");
        var left = facts.Due.Where(d => d.IsLeft).Except(stop).ToList();
        if (left.Count > 0)
        {
            decide.Add("Out of use unless a swap before is planned: "
                + Names(left.Select(d => $"{d.Name} from {facts.Time.Day(d.OutOfUseBy!.Value)}")) + ".");
        }

        if (now.Count > 0) decide.Add($"When to swap {Names(now.Select(d => d.Name))}: past the limit, and in no plan.");
        open.RemoveAll(d => d.IsLeft || d.Condition is { Condition: Condition.SwapNow });
        if (open.Count > 0) decide.Add(
            $"Whether to plan {Show.Count(open.Count, "more chain")} whose limit may come within eight weeks.");
        if (facts.Unjudged > 0) decide.Add($"Whether {Show.Count(facts.Unjudged, "alarm")} of faster wear "
            + $"{(facts.Unjudged == 1 ? "is" : "are")} real: somebody has to look.");
        if (facts.Waiting > 0)
            decide.Add($"What to make of {Show.Count(facts.Waiting, "reading")} that wait for a person's word.");
        decide.AddRange(facts.PlantNotices.Select(n => $"{n.Why} {n.WhatToDo}"));
        if (decide.Count == 0) decide.Add("Nothing waits for a decision.");
        return new("What to decide", decide);
    }

    private static ReportPart Due(MonthFacts facts) => facts.Due.Count == 0
        ? new("What comes due", ["No limit comes within eight weeks."])
        : new(
            "What comes due",
            [$"{Show.Count(facts.Due.Count, "chain")} may reach the limit within eight weeks or "
                + $"{(facts.Due.Count == 1 ? "has" : "have")} passed it"
                + (facts.Due.Count > MostListed ? $"; the {MostListed} most urgent:" : ":")],
            new ReportTable(
                ["Chain", "Line", "Condition", "Early date", "Swap planned for"],
                [
                    .. facts.Due.Take(MostListed).Select(d => new[]
                    {
                        d.Name, d.Line, d.Condition.Words, d.EarlyDate is { } early
                            ? facts.Time.Day(early)
                            : Show.Nothing,
                        d.IsLeft ? HardDateWords.OutOfUse(d.OutOfUseBy!.Value, facts.Time)
                            : d.PlannedFor is { } start ? facts.Time.Day(start)
                            : "not planned",
                    })
                ],
                Words: true));

    private static ReportPart Changed(MonthFacts facts)
    {
        List<string> said = [];
        var byKind = facts.Raised.CountBy(r => r.Notice.Kind).OrderByDescending(k => k.Value).ToList();
        said.Add(byKind.Count == 0
            ? "No notice was raised in the month."
            : $"{Show.Count(facts.Raised.Count, "notice")} {(facts.Raised.Count == 1 ? "was" : "were")} raised: "
                + string.Join(", ", byKind.Select(k => $"{TradeWords.Of(k.Key).ToLowerInvariant()} {Show.Count(k.Value)}"))
                + ".");
        var faster = facts.Raised.Where(r => r.Notice.Kind == NoticeKind.RateHasRisen).ToList();
        if (faster.Count > 0) said.Add($"Began to wear faster: {Names(faster.Select(r => r.Chain))}.");
        return new("What changed", said);
    }

    private static ReportPart Cost(MonthFacts facts, CostStatement month, CostStatement year)
    {
        string[] Row(string what, Func<CostStatement, double> of) =>
            [what, CostWords.Figure(of(month)), CostWords.Figure(of(year) / 12)];
        List<string> said = [];
        if (month.UnusedPrice > 0)
            said.Add($"Of the chains' price {CostWords.Money(month.UnusedPrice, facts.Terms)} was life thrown away "
                + $"({Show.Hours(month.UnusedHours)} of running).");
        if (month.Avoided > 0)
            said.Add($"{Show.Count(month.Avoided, "swap")} came before a breakdown, which would have cost "
                + $"{CostWords.Money(month.Saved, facts.Terms)} more.");
        return new("What it cost", said, new ReportTable(
            [$"In {facts.Terms.Costs.Money}", "Month", "Mean month of the year before"],
            [Row("Chains and sprockets", s => s.Chains + s.Sprockets), Row("Stops for swaps", s => s.Stops),
                Row("Breakdowns", s => s.Breakdowns), Row("Total", s => s.Total)]));
    }

    private static ReportPart Held(MonthFacts facts)
    {
        TrackRecord In(CostPeriod period) => TrackRecord.Of(
            [.. facts.Record.Where(f => f.AtShare == SpreadCheck.AtShare && f.EndedAt is { } ended && period.Holds(ended))
                .Select(f => f.Score)]);
        var (month, year) = (In(facts.Period), In(facts.YearBefore));
        if (month.Count + year.Count == 0)
            return new("Which forecasts held", ["No chain with a forecast from half of its life has reached its limit yet."]);
        string[] Row(string what, TrackRecord record) =>
        [
            what, Show.Count(record.Count), EngineerWords.Share(record.Held90.Fraction),
            EngineerWords.Share(record.Late.Fraction), EngineerWords.Share(record.MedianAbsoluteError),
        ];
        return new(
            "Which forecasts held",
            [string.Create(CultureInfo.InvariantCulture, $"Forecasts at half of life, of lives that ended. The 90 % interval "
                + $"should hold nine of ten: {RecordView.Verdict(year.Held90, 0.9)}.")],
            new ReportTable(
                ["Lives that ended", "Forecasts", "90 % interval held", "Late warnings", "Typical error"],
                [Row("in the month", month), Row("in the year before", year)]));
    }

    private static string Names(IEnumerable<string> names)
    {
        List<string> all = [.. names.Distinct()];
        return all.Count <= MostNamed
            ? string.Join(", ", all)
            : $"{string.Join(", ", all.Take(MostNamed))} and {all.Count - MostNamed} more";
    }
}
