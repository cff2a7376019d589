using Microsoft.AspNetCore.Components;
using WearWatch.Chains.Families;

namespace WearWatch.Dashboard.Tests.Architecture;

/// <summary>Nothing is kept that only tests call.</summary>
public sealed class DeadCodeTests
{
    [Fact]
    public void Every_type_is_reached_from_a_program()
    {
        var graph = TypeGraph.Whole;
        var reached = graph.ReachedFrom(graph.Types.Where(IsFoundByTheFramework));
        string[] dead = [.. graph.Types.Except(reached).Select(t => t.FullName!).Order(StringComparer.Ordinal)];
        Assert.True(dead.Length == 0, "No program reaches:\n" + string.Join('\n', dead));
    }

    /// <summary>
    /// What no code of ours needs to name: programs by their entry, pages by their route, the rest by an attribute or a base.
    /// </summary>
    private static bool IsFoundByTheFramework(Type type) =>
        type.Assembly.EntryPoint?.DeclaringType == type
        || type.IsDefined(typeof(RouteAttribute), inherit: false)
        || type.IsSubclassOf(typeof(ChainFamily)) // found by reflection
        || type.Namespace?.Contains(".Migrations", StringComparison.Ordinal) == true
        || type.GetInterfaces().Any(i => i.Name == "IDesignTimeDbContextFactory`1")
        || type.GetCustomAttributesData().Any(a => a.AttributeType.Name is "CustomMappingFactoryAttributeAttribute");
}
