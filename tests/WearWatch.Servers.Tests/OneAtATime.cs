namespace WearWatch.Servers.Tests;

/// <summary>Tests that start servers of their own and kill them: they wait most of the time, but for the same cores.</summary>
[CollectionDefinition(nameof(OneAtATime))]
public sealed class OneAtATime;
