namespace WearWatch.Storage.Rows;

/// <summary>What stops, breakdowns and haste cost the plant; one row.</summary>
public sealed class PlanningCostsRow
{
    public int Id { get; init; }

    public string Money { get; set; } = "EUR";

    public double StoppedLinePerHour { get; set; }

    public double StopHours { get; set; }

    public double BreakdownHours { get; set; }

    public double BreakdownExtra { get; set; }

    public double MeanHoursToFailurePastLimit { get; set; }

    public double OvertimePerHour { get; set; }

    public double ExpressShare { get; set; }

    /// <summary>Price of a pitch of chain whose type has no price in the store.</summary>
    public double UsualPitchPrice { get; set; }

    /// <summary>Price of a drive's sprockets, which a chain run past its limit takes along.</summary>
    public double SprocketPrice { get; set; }

    public int HorizonWeeks { get; set; }
}
