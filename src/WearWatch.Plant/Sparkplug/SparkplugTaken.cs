namespace WearWatch.Plant.Sparkplug;

/// <summary>What came of a message of an edge node.</summary>
/// <param name="Readings">The values that were understood.</param>
/// <param name="Fault">What could not be; null when nothing.</param>
public sealed record SparkplugTaken(IReadOnlyList<SparkplugReading> Readings, Phrase? Fault)
{
    /// <summary>Nothing to take, nothing wrong.</summary>
    public static SparkplugTaken Nothing { get; } = new([], null);
}
