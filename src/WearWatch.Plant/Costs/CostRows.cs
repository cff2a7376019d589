using WearWatch.Planning.Costs;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Costs;

/// <summary>The rows of costs in the words of the planner's domain.</summary>
public static class CostRows
{
    /// <summary>The costs until a plant sets its own. Assumptions, marked so wherever they are shown.</summary>
    public static PlanningCostsRow Usual()
    {
        var usual = new PlanningCosts();
        return new PlanningCostsRow
        {
            Money = usual.Money,
            StoppedLinePerHour = usual.StoppedLinePerHour,
            StopHours = usual.StopHours,
            BreakdownHours = usual.BreakdownHours,
            BreakdownExtra = usual.BreakdownExtra,
            MeanHoursToFailurePastLimit = usual.MeanHoursToFailurePastLimit,
            OvertimePerHour = usual.OvertimePerHour,
            ExpressShare = usual.ExpressShare,
            UsualPitchPrice = 3,
            SprocketPrice = 200,
            HorizonWeeks = 26,
        };
    }

    /// <summary>What things cost.</summary>
    public static PlanningCosts ToCosts(PlanningCostsRow row, IEnumerable<LineCostRow> lines) => new()
    {
        Money = row.Money,
        StoppedLinePerHour = row.StoppedLinePerHour,
        StoppedLinePerHourByLine = lines.ToDictionary(l => l.Line, l => l.StoppedPerHour),
        StopHours = row.StopHours,
        BreakdownHours = row.BreakdownHours,
        BreakdownExtra = row.BreakdownExtra,
        MeanHoursToFailurePastLimit = row.MeanHoursToFailurePastLimit,
        OvertimePerHour = row.OvertimePerHour,
        ExpressShare = row.ExpressShare,
    };
}
