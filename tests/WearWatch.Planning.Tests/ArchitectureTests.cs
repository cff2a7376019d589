using WearWatch.Planning.Windows;

namespace WearWatch.Planning.Tests;

/// <summary>Planning knows the domain and its solver, and nothing that keeps or shows.</summary>
public sealed class ArchitectureTests
{
    [Fact]
    public void Planning_refers_to_the_domain_only() =>
        Assert.Equal(
            ["WearWatch"],
            typeof(ShutdownWindow).Assembly.GetReferencedAssemblies().Select(a => a.Name!)
                .Where(name => name.StartsWith("WearWatch", StringComparison.Ordinal) || name.StartsWith("Microsoft.", StringComparison.Ordinal)));
}
