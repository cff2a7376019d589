namespace WearWatch.Plant.Sparkplug;

/// <summary>Names as they can be kept and found: one that cannot would hold up all messages that came with it.</summary>
/// <remarks>
/// PostgreSQL keeps no text with NUL in it, and no index entry beyond 2,704 bytes; a character takes up to four.
/// </remarks>
internal static class SparkplugName
{
    /// <summary>Characters that a level of a topic may have.</summary>
    public const int LongestLevel = 200;

    /// <summary>Characters of a metric's name that are kept.</summary>
    public const int LongestMetric = 400;

    /// <summary>A metric's name, with NUL replaced and what is beyond the longest left away.</summary>
    public static string OfMetric(string told)
    {
        var length = Math.Min(told.Length, LongestMetric);
        if (length > 0 && char.IsHighSurrogate(told[length - 1])) length--;
        return told[..length].Replace('\0', '\uFFFD');
    }
}
