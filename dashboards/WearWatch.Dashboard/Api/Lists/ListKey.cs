using System.Buffers.Text;
using System.Globalization;
using System.Text.Json;

namespace WearWatch.Dashboard.Api.Lists;

/// <summary>
/// Where a row stands in its list: what the list is sorted by, and at last what no other row has. A cursor holds that of the last
/// row of a page, so that rows which come or go in between leave nothing out and bring nothing twice.
/// </summary>
/// <remarks>Each part is a text whose order by code points is that of the list.</remarks>
internal sealed class ListKey : IComparable<ListKey>
{
    private readonly IReadOnlyList<string> parts;

    private ListKey(IReadOnlyList<string> parts) => this.parts = parts;

    /// <summary>What the list is sorted by first.</summary>
    public string First => parts[0];

    /// <summary>A key of parts.</summary>
    public static ListKey Of(params IReadOnlyList<string> parts) => new(parts);

    /// <summary>Small numbers first.</summary>
    public static string Rising(long number) => (number ^ long.MinValue).ToString("x16", CultureInfo.InvariantCulture);

    /// <summary>Large numbers first.</summary>
    public static string Falling(long number) => Rising(~number);

    /// <summary>Early moments first; those that nobody knows last.</summary>
    public static string Rising(DateTimeOffset? at) => Rising(at?.UtcTicks ?? long.MaxValue);

    /// <summary>Late moments first; those that nobody knows last.</summary>
    public static string Falling(DateTimeOffset? at) => Falling(at?.UtcTicks ?? long.MinValue);

    /// <summary>No before yes.</summary>
    public static string NoFirst(bool yes) => yes ? "1" : "0";

    /// <summary>The key of a cursor; null for a text that is none.</summary>
    public static ListKey? Read(string cursor)
    {
        try
        {
            var parts = JsonSerializer.Deserialize(Base64Url.DecodeFromChars(cursor), ApiJson.Default.IReadOnlyListString);
            return parts is { Count: > 0 } && parts.All(p => p is not null) ? new(parts) : null;
        }
        catch (Exception e) when (e is FormatException or JsonException)
        {
            return null;
        }
    }

    /// <summary>The cursor of the key.</summary>
    public string ToCursor() =>
        Base64Url.EncodeToString(JsonSerializer.SerializeToUtf8Bytes(parts, ApiJson.Default.IReadOnlyListString));

    /// <inheritdoc/>
    public int CompareTo(ListKey? other)
    {
        if (other is null) return 1;
        for (var i = 0; i < Math.Min(parts.Count, other.parts.Count); i++)
        {
            if (string.CompareOrdinal(parts[i], other.parts[i]) is not 0 and var order) return order;
        }

        return parts.Count.CompareTo(other.parts.Count);
    }
}
