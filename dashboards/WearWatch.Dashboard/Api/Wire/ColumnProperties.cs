using System.Diagnostics;
using System.Globalization;
using System.Text.Json.Serialization.Metadata;
using WearWatch.Plant.Files;

namespace WearWatch.Dashboard.Api.Wire;

/// <summary>Gives a shape of the wire the columns of a file as properties, so that no field is listed twice.</summary>
internal static class ColumnProperties
{
    /// <summary>Adds the columns before the shape's own properties, or behind the first of them.</summary>
    /// <typeparam name="TWire">The shape.</typeparam>
    /// <typeparam name="TThing">What the file has a row of.</typeparam>
    /// <param name="shape">The shape as it stands.</param>
    /// <param name="at">Behind so many of its properties.</param>
    /// <param name="columns">The columns.</param>
    /// <param name="thing">What is sent; null for a shape that only comes in.</param>
    /// <param name="texts">Where to what comes in is put, as text by column; null for a shape that only goes out.</param>
    public static void Add<TWire, TThing>(
        JsonTypeInfo shape, int at, IEnumerable<FileColumn<TThing>> columns, Func<TWire, TThing>? thing,
        Func<TWire, Dictionary<string, string>>? texts)
        where TWire : class
    {
        foreach (var column in columns)
        {
            var property = shape.CreateJsonPropertyInfo(TypeOf(column), column.Name);
            if (thing is not null) property.Get = wire => Sent(column, column.Value(thing((TWire)wire)));
            if (texts is not null) property.Set = (wire, value) => texts((TWire)wire)[column.Name] = Text(value);
            else (property.Set, property.IsRequired) = ((_, _) => { }, true); // an answer has every field
            shape.Properties.Insert(at++, property);
        }
    }

    private static Type TypeOf<T>(FileColumn<T> column) => column.IsList ? typeof(IReadOnlyList<int>) : column.Kind switch
    {
        ColumnKind.Text => typeof(string),
        ColumnKind.Whole => typeof(int?),
        ColumnKind.Number => typeof(double?),
        ColumnKind.Moment => typeof(DateTimeOffset?),
        ColumnKind.YesNo => typeof(bool),
        _ => throw new UnreachableException($"A {column.Kind} has no shape."),
    };

    private static object? Sent<T>(FileColumn<T> column, object? value) => value switch
    {
        string list when column.IsList => (IReadOnlyList<int>)
            [.. list.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(n => int.Parse(n, CultureInfo.InvariantCulture))],
        long whole => (int)whole,
        _ => value,
    };

    private static string Text(object? value) =>
        value is IReadOnlyList<int> numbers ? string.Join(' ', numbers) : RowFields.TextOf(value);
}
