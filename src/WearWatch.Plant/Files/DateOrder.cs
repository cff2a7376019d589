namespace WearWatch.Plant.Files;

/// <summary>In which order a file writes the parts of a date that is not by ISO 8601.</summary>
public enum DateOrder
{
    /// <summary>Day, month, year: <c>03.04.2026</c> is 3 April.</summary>
    DayFirst,

    /// <summary>Month, day, year: <c>03/04/2026</c> is 4 March.</summary>
    MonthFirst,
}
