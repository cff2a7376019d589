using System.Net.Mime;
using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.AspNetCore.Http.Json;
using Microsoft.Extensions.Options;
using WearWatch.Dashboard.Kit.Answers;
using WearWatch.Plant.Settings;

namespace WearWatch.Dashboard.Api.Lists;

/// <summary>
/// Answers with a list, in one way for all: a page by cursor with a link to the next (RFC 8288), some members of each row, and a
/// tag by which it is not sent twice (RFC 9110, 8.8.3).
/// </summary>
internal static class ListPaging
{
    /// <summary>What is said of chains that lift goes with their rows, whatever is wished for.</summary>
    private static readonly string[] cautions = ["caution", "cautions", "lifting"];

    /// <summary>Describes a route as one of a list of such rows.</summary>
    public static RouteHandlerBuilder AnswersList<TJson>(this RouteHandlerBuilder route) => route
        .Produces<IReadOnlyList<TJson>>().Produces(304).ProducesValidationProblem(422);

    /// <summary>The page that is wished for.</summary>
    /// <param name="http">The request.</param>
    /// <param name="wish">What is wished for.</param>
    /// <param name="rows">The rows, in the order of their keys.</param>
    /// <param name="keyOf">Where a row stands.</param>
    /// <param name="toJson">A row on the wire.</param>
    /// <param name="around">Puts the rows into what stands around them; null for the rows alone.</param>
    public static IResult Of<TRow, TJson>(
        HttpContext http, ListWish wish, IReadOnlyList<TRow> rows, Func<TRow, ListKey> keyOf, Func<TRow, TJson> toJson,
        Func<JsonArray, JsonNode>? around = null)
    {
        var options = http.RequestServices.GetRequiredService<IOptions<JsonOptions>>().Value.SerializerOptions;
        var shape = options.GetTypeInfo(typeof(TJson));
        string[] members = [.. shape.Properties.Select(p => p.Name)];
        var fields = wish.Fields?.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries) ?? members;
        if (Faults(wish, fields, members) is { Count: > 0 } faults) return Problems.Refused(faults);
        var after = string.IsNullOrEmpty(wish.Cursor) ? null : ListKey.Read(wish.Cursor);
        var rest = after is null ? rows : After(rows, keyOf, after);
        var page = rest.Take(wish.Take ?? ListWish.Most).ToList();
        if (page.Count < rest.Count) http.Response.Headers.Link = Next(http.Request, keyOf(page[^1]));
        var array = new JsonArray([.. page.Select(row => Only(JsonSerializer.SerializeToNode(toJson(row), shape)!, fields))]);
        var answer = JsonSerializer.SerializeToUtf8Bytes(around?.Invoke(array) ?? array, options.GetTypeInfo(typeof(JsonNode)));
        return Unchanged.IsKnown(http, answer)
            ? Results.StatusCode(StatusCodes.Status304NotModified)
            : Results.Bytes(answer, MediaTypeNames.Application.Json + "; charset=utf-8");
    }

    /// <summary>The rows behind one; where that is gone, behind its place.</summary>
    private static IReadOnlyList<TRow> After<TRow>(IReadOnlyList<TRow> rows, Func<TRow, ListKey> keyOf, ListKey after)
    {
        for (var i = 0; i < rows.Count; i++)
        {
            if (keyOf(rows[i]).CompareTo(after) == 0) return [.. rows.Skip(i + 1)];
        }

        return [.. rows.SkipWhile(row => keyOf(row).CompareTo(after) < 0)];
    }

    private static List<Refusal> Faults(ListWish wish, IReadOnlyList<string> fields, IReadOnlyList<string> members)
    {
        var faults = new List<Refusal>();
        if (wish.Take is < 1 or > ListWish.Most) faults.Add(new("take", $"1 to {ListWish.Most}."));
        if (!string.IsNullOrEmpty(wish.Cursor) && ListKey.Read(wish.Cursor) is null)
            faults.Add(new("cursor", $"Take it as the header Link of the page before gives it."));
        if (fields.Except(members).Any())
            faults.Add(new("fields", $"Some of {string.Join(", ", members)}, parted by commas."));
        return faults;
    }

    private static JsonObject Only(JsonNode row, IReadOnlyList<string> fields)
    {
        var all = row.AsObject();
        var kept = cautions.Where(name => all[name] is not null).Concat(fields);
        foreach (var name in all.Select(m => m.Key).Except(kept).ToArray()) all.Remove(name);
        return all;
    }

    /// <summary>The same question from another place on.</summary>
    private static string Next(HttpRequest request, ListKey last)
    {
        var asked = request.Query.Where(q => q.Key is not ("cursor" or "skip"));
        var query = QueryString.Create(asked.Append(new("cursor", last.ToCursor())));
        return $"<{request.PathBase}{request.Path}{query}>; rel=\"next\"";
    }
}
