using System.ComponentModel.DataAnnotations;

namespace WearWatch.Worker;

/// <summary>The settings of the section <c>WearWatch</c>.</summary>
public sealed class WearWatchOptions
{
    /// <summary>Where everything is kept; relative to the content root.</summary>
    [Required(AllowEmptyStrings = false)]
    public string DataFolder { get; set; } = "data";

    /// <summary>
    /// The connection string of PostgreSQL, for more than one process; empty for a SQLite file in the data folder.
    /// </summary>
    public string Database { get; set; } = "";

    /// <summary>Whether this process does a worker's work: inbox, jobs, telemetry. A dashboard beside workers need not.</summary>
    public bool Worker { get; set; } = true;

    /// <summary>
    /// Where metrics and traces are sent by OTLP (gRPC), such as <c>http://localhost:4317</c>; empty for nowhere.
    /// </summary>
    public string Otlp { get; set; } = "";

    /// <summary>How often time's own changes are reviewed: dates, conditions, oiling; from a minute to a day.</summary>
    [Range(typeof(TimeSpan), "00:01:00", "1.00:00:00", ConvertValueInInvariantCulture = true,
        ParseLimitsInInvariantCulture = true)]
    public TimeSpan ReviewEvery { get; set; } = TimeSpan.FromMinutes(15);

    /// <summary>How often the inbox folder is looked into; from a tenth of a second to an hour.</summary>
    [Range(typeof(TimeSpan), "00:00:00.1", "01:00:00", ConvertValueInInvariantCulture = true,
        ParseLimitsInInvariantCulture = true)]
    public TimeSpan InboxEvery { get; set; } = TimeSpan.FromSeconds(5);

    /// <summary>The folder into which a backup is written each night, best on another machine's disk; empty for none.</summary>
    public string BackupFolder { get; set; } = "";

    /// <summary>The plant's hour of day at which it is written, 0 to 23.</summary>
    [Range(0, 23)]
    public int BackupHour { get; set; } = 1;

    /// <summary>How many backups are kept in the folder, the newest.</summary>
    [Range(1, 10_000)]
    public int BackupsKept { get; set; } = 14;

    /// <summary>The plant's hour of day at which the fleet model is trained, 0 to 23.</summary>
    [Range(0, 23)]
    public int TrainingHour { get; set; } = 2;
}
