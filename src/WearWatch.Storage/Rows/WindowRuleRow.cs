namespace WearWatch.Storage.Rows;

/// <summary>A planned shutdown of a line, once or recurring.</summary>
public sealed class WindowRuleRow
{
    public int Id { get; init; }

    /// <summary>Stays the same when a calendar is imported again, so that it replaces what came before.</summary>
    public required string Key { get; init; }

    public required string Line { get; set; }

    /// <summary>The first start, by the plant's wall clock.</summary>
    public DateTime FirstStart { get; set; }

    public double LengthH { get; set; }

    /// <summary>Recurrence rule of RFC 5545, or empty for a single shutdown.</summary>
    public string Recurrence { get; set; } = "";

    /// <summary>Starts that fall out.</summary>
    public IReadOnlyList<DateTime> Exceptions { get; set; } = [];

    public string Crew { get; set; } = "";

    /// <summary>People times hours.</summary>
    public double CrewHours { get; set; }
}
