using System.Globalization;
using WearWatch.Plant.Settings;

namespace WearWatch.Plant.Files;

/// <summary>Reads moments by ISO 8601; without an offset they are the plant's wall clock.</summary>
internal static class MomentText
{
    private static readonly string[] moments =
    [
        "yyyy-MM-dd", "yyyy-MM-ddTHH:mm", "yyyy-MM-ddTHH:mm:ss", "yyyy-MM-ddTHH:mm:ss.FFFFFFF",
        "yyyy-MM-dd HH:mm", "yyyy-MM-dd HH:mm:ss", "yyyy-MM-dd HH:mm:ss.FFFFFFF",
    ];

    private static readonly string[] offsetMoments =
    [
        "yyyy-MM-ddTHH:mmK", "yyyy-MM-ddTHH:mm:ssK", "yyyy-MM-ddTHH:mm:ss.FFFFFFFK",
        "yyyy-MM-dd HH:mmK", "yyyy-MM-dd HH:mm:ssK", "yyyy-MM-dd HH:mm:ss.FFFFFFFK",
    ];

    /// <summary>A moment in UTC, or what is wrong with the text.</summary>
    public static (DateTimeOffset? Moment, Phrase? Fault) Read(string text, TimeZoneInfo zone)
    {
        if (DateTime.TryParseExact(text, moments, CultureInfo.InvariantCulture, DateTimeStyles.None, out var wall))
        {
            if (!Clocks.IsPlausible(wall)) return (null, $"'{text}' is no time of a chain: {Clocks.Plausible}");
            if (zone.IsInvalidTime(wall))
                return (null, $"'{text}' is missing on that day: clocks were put forward over it. Write it with its offset.");
            return (new DateTimeOffset(wall, zone.GetUtcOffset(wall)).ToUniversalTime(), null);
        }

        if (!DateTimeOffset.TryParseExact(
            text, offsetMoments, CultureInfo.InvariantCulture, DateTimeStyles.None, out var moment))
            return (null, $"'{text}' is not a time by ISO 8601, such as 2026-03-01T14:30+01:00 or 2026-03-01.");
        if (!Clocks.IsPlausible(moment.DateTime)) return (null, $"'{text}' is no time of a chain: {Clocks.Plausible}");
        return (moment.ToUniversalTime(), null);
    }
}
