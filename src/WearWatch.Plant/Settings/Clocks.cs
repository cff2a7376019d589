namespace WearWatch.Plant.Settings;

/// <summary>How far the clocks of people, files and phones are trusted.</summary>
public static class Clocks
{
    /// <summary>A time so far ahead of ours may still be another zone's; beyond it lies in the future.</summary>
    public static readonly TimeSpan Ahead = TimeSpan.FromHours(26);

    /// <summary>Which times are plausible at all, in words.</summary>
    public static Phrase Plausible => $"write a year from 1900 to 2199.";

    /// <summary>Whether anything at a chain can have such a date; a zero that a program wrote as a date has not.</summary>
    public static bool IsPlausible(DateTime wall) => wall.Year is >= 1900 and < 2200;

    /// <summary>What is wrong with the time of something that has happened; null when nothing is, or none was told.</summary>
    public static Phrase? FaultOf(DateTimeOffset? at, DateTimeOffset now) => at switch
    {
        { } moment when !IsPlausible(moment.UtcDateTime) => $"No time of a chain: {Plausible}",
        { } moment when moment > now + Ahead => $"The time lies in the future.",
        _ => null,
    };
}
