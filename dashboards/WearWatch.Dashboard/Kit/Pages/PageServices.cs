using Microsoft.Extensions.DependencyInjection.Extensions;

namespace WearWatch.Dashboard.Kit.Pages;

/// <summary>What pages ask.</summary>
public static class PageServices
{
    /// <summary>Adds every query of the dashboard, so that a page with its query needs no line anywhere else.</summary>
    /// <remarks>Queries are found by their ending (docs/vocabulary.md); they hold no state of a person, and live once.</remarks>
    public static IServiceCollection AddQueries(this IServiceCollection services)
    {
        foreach (var query in typeof(PageServices).Assembly.GetTypes().Where(IsQuery)) services.TryAddSingleton(query);
        return services;
    }

    private static bool IsQuery(Type type) =>
        type is { IsClass: true, IsAbstract: false, IsNested: false } && type.Name.EndsWith("Query", StringComparison.Ordinal);
}
