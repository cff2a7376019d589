namespace WearWatch.Storage.Series;

/// <summary>The store of time series did not understand a question, or has no such database.</summary>
public sealed class SeriesQueryException(string message) : Exception(message);
