namespace WearWatch.Dashboard.Kit.Charts;

/// <summary>Maps a stretch of values onto a stretch of pixels.</summary>
public readonly record struct LinearScale(double From, double To, double PixelFrom, double PixelTo)
{
    /// <summary>Where a value lies.</summary>
    public double At(double value) => PixelFrom + (value - From) / (To - From) * (PixelTo - PixelFrom);

    /// <summary>About so many values at round steps (1, 2 or 5 times a power of ten) within the stretch.</summary>
    public IReadOnlyList<double> Ticks(int about)
    {
        var rough = (To - From) / Math.Max(1, about);
        var power = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        var step = power * (rough / power) switch { < 1.5 => 1, < 3.5 => 2, < 7.5 => 5, _ => 10 };
        var first = Math.Ceiling(From / step - 1e-9);
        var last = Math.Floor(To / step + 1e-9);
        return [.. Enumerable.Range(0, (int)(last - first) + 1).Select(i => (first + i) * step)];
    }
}
