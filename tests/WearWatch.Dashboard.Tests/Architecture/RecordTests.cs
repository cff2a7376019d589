using System.Reflection;

namespace WearWatch.Dashboard.Tests.Architecture;

/// <summary>What a value is by its place in a row can be told as long as the row is short.</summary>
public sealed class RecordTests
{
    private const int MostByPlace = 6;

    /// <summary>What the test must find.</summary>
    private sealed record Wide(int A, int B, int C, int D, int E, int F, int G);

    [Fact]
    public void No_record_takes_more_than_six_values_by_their_place() =>
        Assert.Empty(TypeGraph.Ours.SelectMany(a => a.GetTypes())
            .Where(t => t.FullName!.StartsWith("WearWatch", StringComparison.Ordinal) && ValuesByPlace(t) > MostByPlace)
            .Select(t => $"{t.FullName} takes {ValuesByPlace(t)}: give it properties with required and init."));

    [Fact]
    public void A_wider_record_would_be_found() => Assert.Equal(7, ValuesByPlace(typeof(Wide)));

    /// <summary>The compiler gives every record that takes values by place a method that takes it apart again.</summary>
    private static int ValuesByPlace(Type type) =>
        type.GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly)
            .Where(m => m.Name == "Deconstruct").Select(m => m.GetParameters().Length).DefaultIfEmpty().Max();
}
