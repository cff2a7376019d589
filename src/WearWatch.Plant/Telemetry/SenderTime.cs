using System.Globalization;

namespace WearWatch.Plant.Telemetry;

/// <summary>A sender's time by ISO 8601. Without its offset nobody knows which moment it is.</summary>
internal static class SenderTime
{
    public static DateTimeOffset? Read(string text)
    {
        var hasOffset = text.EndsWith('Z') || (text.Length > 6 && text[^6] is '+' or '-' && text[^3] == ':');
        return hasOffset && DateTimeOffset.TryParse(text, CultureInfo.InvariantCulture, DateTimeStyles.None, out var at)
            ? at.ToUniversalTime()
            : null;
    }
}
