using System.Text.Json;
using Microsoft.EntityFrameworkCore.ChangeTracking;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace WearWatch.Storage;

/// <summary>Keeps a list in one column, as JSON.</summary>
internal sealed class JsonList<T>() : ValueConverter<IReadOnlyList<T>, string>(
    list => JsonSerializer.Serialize(list, JsonSerializerOptions.Default),
    text => JsonSerializer.Deserialize<List<T>>(text, JsonSerializerOptions.Default) ?? new List<T>())
{
    public static ValueComparer<IReadOnlyList<T>> Comparer { get; } = new(
        (a, b) => ReferenceEquals(a, b) || (a != null && b != null && a.SequenceEqual(b)),
        list => list.Aggregate(0, (hash, item) => HashCode.Combine(hash, item)),
        list => list.ToList());
}
