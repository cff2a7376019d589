namespace WearWatch.Dashboard.Kit.Charts;

/// <summary>A reading in the picture.</summary>
/// <param name="Hours">Running hours of the chain when it was taken.</param>
/// <param name="Percent">Elongation in percent.</param>
/// <param name="ErrorPercent">Half of the error bar: the expanded uncertainty.</param>
/// <param name="Doubtful">Whether it is likelier a misreading than not.</param>
/// <param name="Told">What to say when a person points at it.</param>
public sealed record PictureReading(double Hours, double Percent, double ErrorPercent, bool Doubtful, string Told);

/// <summary>What was believed after a reading.</summary>
public sealed record PictureTrack(double Hours, double Percent);

/// <summary>
/// When an elongation is reached, in running hours since fitting: early (5 %), quarter, middle, three quarters, late (95 %).
/// </summary>
/// <remarks>Infinite where there is no end in sight.</remarks>
public sealed record PictureLevel(
    double Percent, double EarlyH, double QuarterH, double MiddleH, double ThreeQuartersH, double LateH);

/// <summary>One chain's wear over its running hours, as it is to be drawn.</summary>
public sealed record WearPicture
{
    public required IReadOnlyList<PictureReading> Readings { get; init; }

    public required IReadOnlyList<PictureTrack> Track { get; init; }

    /// <summary>The forecast from now to the limit, by rising elongation; empty when nothing can be said.</summary>
    public required IReadOnlyList<PictureLevel> Levels { get; init; }

    public required double LimitPercent { get; init; }

    /// <summary>Running hours of the chain now.</summary>
    public required double NowH { get; init; }

    /// <summary>Running hours of the chain when its swap is planned; null when none is.</summary>
    public double? SwapH { get; init; }

    /// <summary>Running hours at which the chain was lubricated.</summary>
    public IReadOnlyList<double> OiledH { get; init; } = [];

    /// <summary>When it was fitted, at hour zero, in words; null where that is not known.</summary>
    public string? Fitted { get; init; }

    /// <summary>Which day belongs to which hour; ahead by the plant's average week.</summary>
    public HourDates Days { get; init; } = new([]);

    /// <summary>From when the running hours count, in words for the axis.</summary>
    public string HoursAre { get; init; } = T["running hours since fitting"];

    /// <summary>The dates at which the limit is reached, in words: early, middle, late.</summary>
    public (string? Early, string? Middle, string? Late) Dates { get; init; }
}
