namespace WearWatch.Lives;

/// <summary>An interval in which a value is believed to lie.</summary>
/// <param name="Low">Its lower end.</param>
/// <param name="High">Its upper end.</param>
public readonly record struct ConfidenceInterval(double Low, double High)
{
    /// <summary>Whether a value lies in it, ends included.</summary>
    public bool Contains(double value) => Low <= value && value <= High;
}
