using System.Net.Mime;
using System.Text.Json;
using WearWatch.Dashboard.Engineer.History;
using WearWatch.Dashboard.Kit.Answers;

namespace WearWatch.Dashboard.Api;

/// <summary>
/// The plant's history page by page, by rising row number: what was told while somebody reads is on the last page.
/// </summary>
internal static class HistoryApi
{
    private const int UsualRows = 1000;
    private const int MostRows = 10_000;

    public static void Map(IEndpointRouteBuilder api)
    {
        api.MapGet("/history", Describe).WithTags("History").WithSummary("The tables of the history with their columns")
            .Produces(200, contentType: "application/json");
        api.MapGet("/history/{table}", PageAsync).WithTags("History")
            .WithSummary("Rows of a table after a row number; the header Link names the next page")
            .Produces(200, contentType: "application/json")
            .ProducesProblem(404).ProducesValidationProblem(422);
    }

    private static IResult Describe(HistoryTables tables) => Json(writer =>
    {
        writer.WriteStartArray();
        foreach (var table in tables.All)
        {
            writer.WriteStartObject();
            writer.WriteString("table", table.Name);
            writer.WriteString("meaning", T[table.Meaning]);
            writer.WriteStartArray("columns");
            foreach (var column in table.Columns)
            {
                writer.WriteStartObject();
                writer.WriteString("name", column.Name);
                writer.WriteString("holds", Tokens.Of(column.Kind));
                writer.WriteString("meaning", T[column.Meaning]);
                writer.WriteEndObject();
            }

            writer.WriteEndArray();
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
    });

    private static async Task<IResult> PageAsync(
        HistoryTables tables, HttpResponse response, string table, long? after, int? limit, CancellationToken ct)
    {
        if (tables.Of(table) is not { } found)
            return Problems.NotFound(
                $"No table is called '{table}'; there are {string.Join(", ", tables.All.Select(t => t.Name))}.");
        if (limit is < 1 or > MostRows) return Problems.Refused("limit", $"1 to {MostRows}.");
        if (after is < 0) return Problems.Refused("after", $"0 or more.");
        var wanted = limit ?? UsualRows;
        var rows = await found.Page(after ?? 0, wanted, ct);
        long? next = rows.Count == wanted ? HistoryTable.NumberOf(rows[^1]) : null;
        if (next is { } more) response.Headers.Link =
            FormattableString.Invariant($"</api/v1/history/{found.Name}?after={more}&limit={wanted}>; rel=\"next\"");
        return Json(writer => Write(writer, found, rows, next));
    }

    private static void Write(Utf8JsonWriter writer, HistoryTable table, IReadOnlyList<object?[]> rows, long? next)
    {
        writer.WriteStartObject();
        writer.WriteStartArray("rows");
        foreach (var row in rows)
        {
            writer.WriteStartObject();
            for (var i = 0; i < row.Length; i++) Write(writer, table.Columns[i].Name, row[i]);
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
        if (next is { } after) writer.WriteNumber("next_after", after);
        else writer.WriteNull("next_after");
        writer.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter writer, string name, object? value)
    {
        switch (value)
        {
            case null:
                writer.WriteNull(name);
                break;
            case long whole:
                writer.WriteNumber(name, whole);
                break;
            case double number:
                writer.WriteNumber(name, number);
                break;
            case bool yes:
                writer.WriteBoolean(name, yes);
                break;
            case DateTimeOffset moment:
                writer.WriteString(name, moment);
                break;
            default:
                writer.WriteString(name, (string)value);
                break;
        }
    }

    private static IResult Json(Action<Utf8JsonWriter> write)
    {
        using var text = new MemoryStream();
        using (var writer = new Utf8JsonWriter(text)) write(writer);
        return Results.Bytes(text.ToArray(), MediaTypeNames.Application.Json);
    }
}
