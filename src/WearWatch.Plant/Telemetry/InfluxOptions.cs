using System.ComponentModel.DataAnnotations;
using WearWatch.Storage.Series;

namespace WearWatch.Plant.Telemetry;

/// <summary>The settings of the section <c>WearWatch:Influx</c>.</summary>
public sealed class InfluxOptions
{
    /// <summary>The server, such as <c>http://localhost:8086</c>; empty for none.</summary>
    public string Url { get; set; } = "";

    /// <summary>Database and retention policy, or the bucket.</summary>
    [Required(AllowEmptyStrings = false)]
    public string Bucket { get; set; } = "wear/autogen";

    /// <summary>The token; <c>user:password</c> for InfluxDB 1.</summary>
    public string Token { get; set; } = "";

    /// <summary>The organisation of InfluxDB 2.</summary>
    public string Organisation { get; set; } = "";

    /// <summary>The server's version: 1, 2 or 3.</summary>
    [Range(1, 3)]
    public int Version { get; set; } = 1;

    /// <summary>How often is looked for telemetry to send on; from a tenth of a second to ten minutes.</summary>
    [Range(typeof(TimeSpan), "00:00:00.1", "00:10:00", ConvertValueInInvariantCulture = true,
        ParseLimitsInInvariantCulture = true)]
    public TimeSpan Every { get; set; } = TimeSpan.FromSeconds(1);

    /// <summary>Where telemetry is sent on to; null for nowhere.</summary>
    public SeriesAddress? Address =>
        Url.Length == 0 ? null : new SeriesAddress(new Uri(Url.TrimEnd('/') + "/"), Bucket, Token, Organisation, Version == 1);
}
