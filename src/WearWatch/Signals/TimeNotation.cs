namespace WearWatch.Signals;

/// <summary>How a foreign message tells its time. The numbers are kept in the database: never change one.</summary>
public enum TimeNotation
{
    /// <summary>Not at all: the moment of its arrival counts.</summary>
    Arrival = 0,

    /// <summary>As text by ISO 8601, with its offset.</summary>
    Iso8601 = 1,

    /// <summary>Seconds since 1970.</summary>
    UnixSeconds = 2,

    /// <summary>Milliseconds since 1970.</summary>
    UnixMilliseconds = 3,
}
