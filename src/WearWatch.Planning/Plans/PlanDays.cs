namespace WearWatch.Planning.Plans;

/// <summary>The dates that a plan speaks of: those of the plant, since its moments stand in the plant's zone.</summary>
internal static class PlanDays
{
    /// <summary>The date of a moment.</summary>
    public static DateOnly Day(this DateTimeOffset moment) => DateOnly.FromDateTime(moment.Date);

    /// <summary>The date of a moment that may be missing.</summary>
    public static DateOnly? Day(this DateTimeOffset? moment) => moment?.Day();
}
