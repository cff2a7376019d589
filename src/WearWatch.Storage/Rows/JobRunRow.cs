namespace WearWatch.Storage.Rows;

/// <summary>The newest run of a regular job: one row a job, over all processes.</summary>
public sealed class JobRunRow
{
    public required string Job { get; init; }

    /// <summary>The process that ran it: machine and process number.</summary>
    public string Worker { get; set; } = "";

    public DateTimeOffset StartedAt { get; set; }

    /// <summary>When it was last brought to its end, by this run or an earlier one; null while it never was.</summary>
    public DateTimeOffset? DoneAt { get; set; }

    /// <summary>Why the newest run failed; empty when it did not.</summary>
    public string Fault { get; set; } = "";
}
