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

    /// <summary>Hours before a shutdown from which proposals leave its swaps as they are.</summary>
    public int FrozenHours { get; set; } = UsualFrozenHours;

    /// <summary>These hours where a plant has set none: parts, people and permits are arranged by then. An assumption.</summary>
    public const int UsualFrozenHours = 48;
}
