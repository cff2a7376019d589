namespace WearWatch.Storage.Rows;

/// <summary>
/// A person's appointment to examine and release lifting chains. Rows are only ever added: its end is a row of its own.
/// </summary>
public sealed class AppointmentRow
{
    public int Id { get; init; }

    /// <summary>The name, as the person signs in.</summary>
    public required string Person { get; init; }

    /// <summary>Training and experience for which the person was appointed.</summary>
    public required string Qualification { get; init; }

    /// <summary>The line to which it is bound; empty for all.</summary>
    public string Line { get; init; } = "";

    /// <summary>The kind of chain to which it is bound, by name; empty for all that lift.</summary>
    public string Family { get; init; } = "";

    public DateOnly From { get; init; }

    /// <summary>The last day on which it holds.</summary>
    public DateOnly Until { get; init; }

    public required string AppointedBy { get; init; }

    public DateTimeOffset At { get; init; }

    /// <summary>Set on a row that ends an earlier appointment.</summary>
    public int? EndsId { get; init; }

    /// <summary>Why it was ended, or empty.</summary>
    public string Why { get; init; } = "";
}
