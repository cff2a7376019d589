namespace WearWatch.Storage.Series;

/// <summary>Where raw telemetry is kept as time series.</summary>
/// <param name="Url">The server, such as <c>http://localhost:8086</c>.</param>
/// <param name="Bucket">The database and its retention policy, <c>wear/autogen</c>, or the bucket of InfluxDB 2 and 3.</param>
/// <param name="Token">The token; <c>user:password</c> for InfluxDB 1; empty where the server asks for none.</param>
/// <param name="Organisation">The organisation of InfluxDB 2; the others ignore it.</param>
/// <param name="IsVersion1">Whether the server is InfluxDB 1, which knows another address for writing.</param>
public sealed record SeriesAddress(Uri Url, string Bucket, string Token, string Organisation, bool IsVersion1);
