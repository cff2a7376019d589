using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Webhooks;

/// <summary>Makes secrets and signatures by the open specification Standard Webhooks (from memory).</summary>
public static class WebhookSecret
{
    private const string Mark = "whsec_"; // by it a secret that leaked into a file is recognised
    private const int Bytes = 32;

    /// <summary>How long the secret before signs beside a new one: a day to change it at the receiver.</summary>
    public static TimeSpan Overlap { get; } = TimeSpan.FromDays(1);

    /// <summary>A new secret.</summary>
    public static string Make() => Mark + Convert.ToBase64String(RandomNumberGenerator.GetBytes(Bytes));

    /// <summary>
    /// The signatures of what is sent, parted by spaces: HMAC-SHA-256 (RFC 2104) over id, seconds since 1970 and body, joined by
    /// full stops.
    /// </summary>
    /// <param name="address">Whose secrets sign.</param>
    /// <param name="id">The event's id.</param>
    /// <param name="at">When it is sent.</param>
    /// <param name="body">What is sent.</param>
    public static string Sign(WebhookAddressRow address, string id, DateTimeOffset at, string body)
    {
        var signed = Encoding.UTF8.GetBytes(
            string.Create(CultureInfo.InvariantCulture, $"{id}.{at.ToUnixTimeSeconds()}.{body}"));
        var former = address.FormerUntil > at ? address.FormerSecret : "";
        return string.Join(' ', new[] { address.Secret, former }.Where(s => s.Length > 0)
            .Select(s => "v1," + Convert.ToBase64String(HMACSHA256.HashData(KeyOf(s), signed))));
    }

    private static byte[] KeyOf(string secret) => Convert.FromBase64String(secret[Mark.Length..]);
}
