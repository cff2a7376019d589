namespace WearWatch.Storage.Series;

/// <summary>What a store of time series said to rows that were sent.</summary>
public abstract record SeriesAnswer
{
    private SeriesAnswer()
    {
    }

    /// <summary>All are stored.</summary>
    public sealed record Stored : SeriesAnswer;

    /// <summary>Some are wrong; the others may be stored or not. To be sent again in smaller parts.</summary>
    /// <param name="Why">What the server said.</param>
    public sealed record Wrong(string Why) : SeriesAnswer;

    /// <summary>The server is away or busy: to be tried again.</summary>
    /// <param name="Why">What went wrong.</param>
    public sealed record Away(string Why) : SeriesAnswer;

    /// <summary>The server does not let us in, or has no such bucket: a person has to set it right.</summary>
    /// <param name="Why">What the server said.</param>
    public sealed record ShutOut(string Why) : SeriesAnswer;
}
