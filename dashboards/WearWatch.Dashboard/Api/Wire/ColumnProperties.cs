using System.Diagnostics;
using System.Globalization;
using System.Text.Json.Serialization.Metadata;
using WearWatch.Plant.Files;

namespace WearWatch.Dashboard.Api.Wire;

/// <summary>Gives a shape of the wire the columns of a file as properties, so that no field is listed twice.</summary>
internal static class ColumnProperties
{
    /// <summary>Adds the columns to the shape of an answer.</summary>
    /// <typeparam name="TWire">The shape.</typeparam>
    /// <typeparam name="TThing">What the file has a row of.</typeparam>
    /// <param name="shape">The shape as it stands.</param>
    /// <param name="at">Behind so many of its properties.</param>
    /// <param name="columns">The columns.</param>
    /// <param name="thing">What is sent.</param>
    /// <param name="blank">A thing of which nothing is told: what it has all the same, every answer has.</param>
    public static void AddAnswer<TWire, TThing>(
        JsonTypeInfo shape, int at, IEnumerable<FileColumn<TThing>> columns, Func<TWire, TThing> thing, TThing blank)
        where TWire : class
    {
        foreach (var column in columns)
        {
            var hasAlways = column.Value(blank) is not null;
            var property = Insert(shape, at++, column, isNullable: !hasAlways);
            property.Get = wire => Sent(column, column.Value(thing((TWire)wire)));
            property.Set = (_, _) => { }; // never read: but only what could be read may be called required
            (property.IsRequired, property.IsGetNullable, property.IsSetNullable) = (hasAlways, !hasAlways, !hasAlways);
        }
    }

    /// <summary>Adds the columns to the shape of what comes in; each may be left out.</summary>
    /// <param name="shape">The shape as it stands.</param>
    /// <param name="at">Behind so many of its properties.</param>
    /// <param name="columns">The columns.</param>
    /// <param name="texts">Where to it is put, as text by column.</param>
    public static void AddEntry<TWire, TThing>(
        JsonTypeInfo shape, int at, IEnumerable<FileColumn<TThing>> columns, Func<TWire, Dictionary<string, string>> texts)
        where TWire : class
    {
        foreach (var column in columns)
            Insert(shape, at++, column, isNullable: true).Set = (wire, value) => texts((TWire)wire)[column.Name] = Text(value);
    }

    /// <summary>Adds the columns to a shape that goes out and comes back in; before its own properties.</summary>
    /// <param name="shape">The shape as it stands.</param>
    /// <param name="columns">The columns.</param>
    /// <param name="thing">What is sent.</param>
    /// <param name="texts">Where to what comes in is put, as text by column.</param>
    public static void AddBoth<TWire, TThing>(
        JsonTypeInfo shape, IEnumerable<FileColumn<TThing>> columns, Func<TWire, TThing> thing,
        Func<TWire, Dictionary<string, string>> texts)
        where TWire : class
    {
        foreach (var (at, column) in columns.Index())
        {
            var property = Insert(shape, at, column, isNullable: column.Kind != ColumnKind.YesNo);
            property.Get = wire => Sent(column, column.Value(thing((TWire)wire)));
            property.Set = (wire, value) => texts((TWire)wire)[column.Name] = Text(value);
        }
    }

    private static JsonPropertyInfo Insert<T>(JsonTypeInfo shape, int at, FileColumn<T> column, bool isNullable)
    {
        var property = shape.CreateJsonPropertyInfo(TypeOf(column, isNullable), column.Name);
        shape.Properties.Insert(at, property);
        return property;
    }

    private static Type TypeOf<T>(FileColumn<T> column, bool isNullable) => column.Kind switch
    {
        _ when column.IsList => typeof(IReadOnlyList<int>),
        ColumnKind.Text => typeof(string),
        ColumnKind.Whole => isNullable ? typeof(int?) : typeof(int),
        ColumnKind.Number => isNullable ? typeof(double?) : typeof(double),
        ColumnKind.Moment => isNullable ? typeof(DateTimeOffset?) : typeof(DateTimeOffset),
        ColumnKind.YesNo => isNullable ? typeof(bool?) : typeof(bool),
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
