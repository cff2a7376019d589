using WearWatch.Dashboard.Kit.Language;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Planner;

/// <summary>Checks costs as they are typed.</summary>
public static class CostsText
{
    /// <summary>The costs as a fresh row with the lines' own figures, or what is wrong with them.</summary>
    public static (PlanningCostsRow? Costs, IReadOnlyList<LineCostRow> Lines, string? Fault) Read(
        PlanningCostsRow typed, string lines, IReadOnlyList<string> known)
    {
        var costs = new List<LineCostRow>();
        foreach (var text in lines.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var at = text.LastIndexOf('=');
            var line = at < 0 ? "" : text[..at].Trim();
            if (!known.Contains(line))
                return (null, [], T[$"'{text}': there is no line of that name. Write the line, =, and an amount."]);
            if (TypedNumber.Of(text[(at + 1)..]) is not (>= 0 and <= 1e9 and var amount))
                return (null, [], T[$"'{text}': the amount is a number of 0 or more."]);
            if (costs.Any(c => c.Line == line)) return (null, [], T[$"'{line}' stands twice."]);
            costs.Add(new LineCostRow { Line = line, StoppedPerHour = amount });
        }

        double[] amounts =
        [
            typed.StoppedLinePerHour, typed.StopHours, typed.BreakdownHours, typed.BreakdownExtra, typed.OvertimePerHour,
                typed.ExpressShare
        ];
        if (amounts.Any(amount => amount is not (>= 0 and <= 1e12)))
            return (null, [], T["A cost or a number of hours is not negative."]);
        if (typed.MeanHoursToFailurePastLimit is not (> 0 and <= 1e6))
            return (null, [], T[$"The mean hours to failure lie above 0 and at most at {1_000_000:#,0} h."]);
        if (typed.HorizonWeeks is < 1 or > 104) return (null, [], T["Plan 1 to 104 weeks ahead."]);
        if (typed.FrozenHours is < 0 or > 1000)
            return (null, [], T[$"Proposals leave a stop alone from 0 to {1000:#,0} hours before it."]);
        if (typed.UsualPitchPrice is not (>= 0 and <= 1e6) || typed.SprocketPrice is not (>= 0 and <= 1e9))
            return (null, [], T["A price is not negative."]);
        return (new PlanningCostsRow
        {
            Money = typed.Money.Trim(),
            StoppedLinePerHour = typed.StoppedLinePerHour,
            StopHours = typed.StopHours,
            BreakdownHours = typed.BreakdownHours,
            BreakdownExtra = typed.BreakdownExtra,
            MeanHoursToFailurePastLimit = typed.MeanHoursToFailurePastLimit,
            OvertimePerHour = typed.OvertimePerHour,
            ExpressShare = typed.ExpressShare,
            UsualPitchPrice = typed.UsualPitchPrice,
            SprocketPrice = typed.SprocketPrice,
            HorizonWeeks = typed.HorizonWeeks,
            FrozenHours = typed.FrozenHours,
        }, costs, null);
    }
}
