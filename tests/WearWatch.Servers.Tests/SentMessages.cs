using System.Globalization;

namespace WearWatch.Servers.Tests;

/// <summary>Many messages of several chains, all different.</summary>
internal static class SentMessages
{
    /// <summary>Temperatures of chains C0, C1, ..., in turn, each message with its own id and figure.</summary>
    /// <param name="first">The first message's number.</param>
    /// <param name="count">How many.</param>
    /// <param name="chains">By how many chains.</param>
    /// <param name="start">The time of message 0; one follows each millisecond.</param>
    public static IEnumerable<(string Topic, string Payload)> Temperatures(
        int first, int count, int chains, DateTimeOffset start) =>
        Enumerable.Range(first, count).Select(i => (
            $"wearwatch/v1/plant/C{i % chains}/temperature",
            string.Create(CultureInfo.InvariantCulture,
                $"{{\"id\":\"t{i}\","
                + $"\"at\":\"{start.AddMilliseconds(i).UtcDateTime:yyyy-MM-dd'T'HH:mm:ss.fff'Z'}\","
                + $"\"temperature_c\":{ValueOf(i):0.####}}}")));

    /// <summary>The figure of a message.</summary>
    public static double ValueOf(int number) => number % 1_000 / 10.0 - 20;
}
