using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;
using Microsoft.EntityFrameworkCore.Storage;

namespace WearWatch.Storage.Engines;

/// <summary>A column and how a row's value is stored in it.</summary>
internal sealed class Column<T>(IProperty property)
{
    private readonly IClrPropertyGetter getter = property.GetGetter();

    public string Name { get; } = property.GetColumnName();

    public RelationalTypeMapping Mapping { get; } = property.GetRelationalTypeMapping();

    /// <summary>The columns of an entity that a row brings; not those that the database makes.</summary>
    public static List<Column<T>> Of(IEntityType entity) =>
        [.. entity.GetProperties().Where(p => p.ValueGenerated == ValueGenerated.Never).Select(p => new Column<T>(p))];

    public object? Of(T row) =>
        getter.GetClrValue(row!) is not { } value ? null
        : Mapping.Converter is { } converter ? converter.ConvertToProvider(value)
        : value;
}
