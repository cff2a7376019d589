namespace WearWatch.Plant.Settings;

/// <summary>How far the clocks of people, files and phones are trusted.</summary>
public static class Clocks
{
    /// <summary>A time so far ahead of ours may still be another zone's; beyond it lies in the future.</summary>
    public static readonly TimeSpan Ahead = TimeSpan.FromHours(26);
}
