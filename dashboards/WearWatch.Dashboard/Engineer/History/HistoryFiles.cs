using System.Net.Mime;
using System.Text;
using WearWatch.Dashboard.Kit.Exports;
using WearWatch.Plant.People;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Engineer.History;

/// <summary>The tables of the history as files.</summary>
public static class HistoryFiles
{
    private const int BufferBytes = 1 << 16;

    public static void MapHistoryFiles(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/engineering/history/{table}.csv", async (HistoryTables tables, SecurityLog log, string table) =>
            await ToldAsync(tables.Of(table), log) is { } found
            ? Results.Stream(to => WriteCsvAsync(found, to), MediaTypeNames.Text.Csv, found.Name + ".csv")
            : Results.NotFound());
        routes.MapGet("/engineering/history/{table}.parquet",
            async (HistoryTables tables, SecurityLog log, string table, CancellationToken ct) =>
            await ToldAsync(tables.Of(table), log) is { } found
            ? Results.Stream(await ParquetAsync(found, ct), "application/vnd.apache.parquet", found.Name + ".parquet")
            : Results.NotFound());
    }

    private static async Task<HistoryTable?> ToldAsync(HistoryTable? table, SecurityLog log)
    {
        if (table is not null) await log.AddAsync(SecurityEventKind.Exported, table.Name);
        return table;
    }

    private static async Task WriteCsvAsync(HistoryTable table, Stream to)
    {
        await using var writer = new StreamWriter(to, new UTF8Encoding(false), BufferBytes);
        await writer.WriteAsync(CsvExport.Text([.. table.Columns.Select(c => c.Name)], []));
        await foreach (var rows in table.PagesAsync(default)) await writer.WriteAsync(CsvExport.Lines(rows));
    }

    // The end of a Parquet file tells where everything lies: it is written to disk first, and gone once it is sent.
    private static async Task<Stream> ParquetAsync(HistoryTable table, CancellationToken ct)
    {
        var file = new FileStream(
            Path.GetTempFileName(), FileMode.Create, FileAccess.ReadWrite, FileShare.None, BufferBytes,
            FileOptions.DeleteOnClose | FileOptions.Asynchronous);
        try
        {
            await HistoryParquet.WriteAsync(table, file, ct);
            file.Position = 0;
            return file;
        }
        catch
        {
            await file.DisposeAsync();
            throw;
        }
    }
}
