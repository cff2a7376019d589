using WearWatch.Servers.Tests;
using Xunit.Sdk;
using Xunit.v3;

[assembly: TestCollectionOrderer(typeof(LongestFirst))]
[assembly: Parallelization(MaxThreads = 3)] // they wait for servers more than they compute

namespace WearWatch.Servers.Tests;

/// <summary>The tests that wait longest begin first, so that the others run while they wait.</summary>
internal sealed class LongestFirst : ITestCollectionOrderer
{
    private static readonly string[] First = [nameof(ChaosTests), nameof(OneAtATime), nameof(SharedJobTests)];

    public IReadOnlyCollection<TTestCollection> OrderTestCollections<TTestCollection>(
        IReadOnlyCollection<TTestCollection> testCollections)
        where TTestCollection : ITestCollection =>
        [.. testCollections.OrderBy(c => PlaceOf(c.TestCollectionDisplayName))];

    private static int PlaceOf(string name) =>
        Array.FindIndex(First, f => name.Contains(f, StringComparison.Ordinal)) is var at and >= 0 ? at : First.Length;
}
