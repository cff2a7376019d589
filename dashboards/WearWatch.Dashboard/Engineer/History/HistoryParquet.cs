using Parquet;
using Parquet.Schema;
using WearWatch.Plant.Files;

namespace WearWatch.Dashboard.Engineer.History;

/// <summary>
/// Writes a table of the history as Apache Parquet: a row group for each page read, nullable columns, moments in UTC.
/// </summary>
public static class HistoryParquet
{
    /// <summary>Writes all rows.</summary>
    /// <param name="table">The table.</param>
    /// <param name="to">Where to; it must be able to seek.</param>
    /// <param name="ct">Stops between two pages.</param>
    public static async Task WriteAsync(HistoryTable table, Stream to, CancellationToken ct)
    {
        DataField[] fields = [.. table.Columns.Select(FieldOf)];
        await using var writer = await ParquetWriter.CreateAsync(new ParquetSchema(fields), to, cancellationToken: ct);
        await foreach (var rows in table.PagesAsync(ct))
        {
            using var group = writer.CreateRowGroup();
            for (var column = 0; column < fields.Length; column++)
                await WriteAsync(group, fields[column], table.Columns[column].Kind, rows, column, ct);
            group.CompleteValidate();
        }
    }

    private static DataField FieldOf(HistoryColumn column) => column.Kind switch
    {
        ColumnKind.Text => new DataField<string>(column.Name),
        ColumnKind.Whole => new DataField<long?>(column.Name),
        ColumnKind.Number => new DataField<double?>(column.Name),
        ColumnKind.Moment =>
            new DateTimeDataField(column.Name, DateTimeFormat.Timestamp, isAdjustedToUTC: true, isNullable: true),
        ColumnKind.YesNo => new DataField<bool?>(column.Name),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static Task WriteAsync(
        ParquetRowGroupWriter group, DataField field, ColumnKind kind, IReadOnlyList<object?[]> rows, int column,
        CancellationToken ct)
    {
        T?[] Of<T>() where T : struct => [.. rows.Select(r => (T?)r[column])];
        return kind switch
        {
            ColumnKind.Text =>
                group.WriteAsync(field, (IReadOnlyCollection<string>)rows.Select(r => (string?)r[column]).ToArray()!),
            ColumnKind.Whole => group.WriteAsync<long>(field, Of<long>(), cancellationToken: ct),
            ColumnKind.Number => group.WriteAsync<double>(field, Of<double>(), cancellationToken: ct),
            ColumnKind.Moment => group.WriteAsync<DateTime>(
                field, rows.Select(r => ((DateTimeOffset?)r[column])?.UtcDateTime).ToArray(), cancellationToken: ct),
            ColumnKind.YesNo => group.WriteAsync<bool>(field, Of<bool>(), cancellationToken: ct),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }
}
