using Microsoft.OpenApi;

namespace WearWatch.Dashboard.Api;

/// <summary>
/// How the API describes itself (OpenAPI): beside what stands on its routes, what a parameter means wherever it is, the header of
/// every write, and the API key.
/// </summary>
internal static class ApiDescription
{
    private const string KeyHeader = "Idempotency-Key";
    private const string Key = "key";

    /// <summary>What a parameter means, by its name: the same name means the same on every route.</summary>
    private static readonly Dictionary<string, string> meanings = new()
    {
        ["after"] = "Only rows with a higher row number.",
        ["assigned"] = "Only those that this person deals with.",
        ["by"] = "Who sends it; left out, whoever is signed in.",
        ["chain"] = "The chain's name.",
        ["condition"] = "One condition, in the words of the vocabulary with underscores, such as plan_a_swap.",
        ["corrects"] = "The number of the reading that this one would replace.",
        ["descending"] = "The other way round.",
        ["designation"] = "The designation of a chain type, such as 16B-1.",
        ["due_before"] = "Only chains whose early date lies before this day.",
        ["ended"] = "Ended ones instead of open ones.",
        ["family"] = "Only chains of this kind, such as roller.",
        ["id"] = "The number of the row.",
        ["key"] = "The key of the inspection to which it belongs.",
        ["kind"] = "Only this kind; of a paper, what it is.",
        ["lifting"] = "The name of a chain that lifts.",
        ["lifts"] = "Only chains that lift or hold a load, or only the others.",
        ["limit"] = "How many rows at most.",
        ["line"] = "Only chains of this line.",
        ["name"] = "The name of the file.",
        ["point"] = "The point of the checklist.",
        ["preview"] = "Says what an import would do, and stores nothing.",
        ["search"] = "Words that stand in the name, position, type or line.",
        ["skip"] = "How many rows to leave out at the beginning.",
        ["sort"] = "What the list is sorted by, such as early.",
        ["standing"] = "Only those that stand so.",
        ["table"] = "A table of the history.",
        ["tension_before"] = "Only chains that are shortened or tensioned anew before this day.",
        ["urgent"] = "Only urgent ones.",
    };

    /// <summary>Adds the description.</summary>
    public static IServiceCollection AddApiDescription(this IServiceCollection services) => services.AddOpenApi("v1", options =>
    {
        options.ShouldInclude = route => route.RelativePath?.StartsWith("api/v1", StringComparison.Ordinal) == true;
        options.AddDocumentTransformer((document, _, _) =>
        {
            (document.Info.Title, document.Info.Version) = ("WearWatch", "v1");
            document.Info.Description = "Writes carry an Idempotency-Key: sent again, they change nothing. Errors are problem "
                + "details (RFC 9457) with a kind that stays. Lists come by take, cursor and fields, with an ETag.";
            document.Components ??= new();
            document.Components.SecuritySchemes ??= new Dictionary<string, IOpenApiSecurityScheme>();
            document.Components.SecuritySchemes[Key] = new OpenApiSecurityScheme
            {
                Type = SecuritySchemeType.Http,
                Scheme = "bearer",
                Description = "An API key; an administrator makes it at /people/api-keys.",
            };
            return Task.CompletedTask;
        });
        options.AddOperationTransformer((operation, route, _) =>
        {
            Describe(operation, route.Description.HttpMethod);
            return Task.CompletedTask;
        });
    });

    private static void Describe(OpenApiOperation operation, string? method)
    {
        foreach (var parameter in operation.Parameters ?? [])
            parameter.Description ??= meanings.GetValueOrDefault(parameter.Name ?? "");
        if (method == HttpMethods.Get || operation.Summary?.Contains(KeyHeader, StringComparison.Ordinal) != true) return;
        operation.Parameters ??= [];
        operation.Parameters.Add(new OpenApiParameter
        {
            Name = KeyHeader,
            In = ParameterLocation.Header,
            Required = true,
            Description = "A key of its own for each write, 1 to 200 characters: sent again, it changes nothing.",
            Schema = new OpenApiSchema
            {
                Type = JsonSchemaType.String,
                MinLength = 1,
                MaxLength = KeyedRequest<object>.LongestKey,
            },
        });
    }
}
