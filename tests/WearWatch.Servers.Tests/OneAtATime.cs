namespace WearWatch.Servers.Tests;

/// <summary>Tests that start servers of their own: side by side they would only wait for one another.</summary>
[CollectionDefinition(nameof(OneAtATime), DisableParallelization = true)]
public sealed class OneAtATime;
