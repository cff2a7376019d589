namespace WearWatch.Dashboard.Technician.Oiling;

/// <summary>How soon a chain is to be oiled, most pressing first.</summary>
public enum DueState
{
    /// <summary>A whole interval or more over its time.</summary>
    Overdue,

    /// <summary>Due, or due before the day ends.</summary>
    Today,

    /// <summary>Due within seven days.</summary>
    ThisWeek,
}
