using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using WearWatch.Dashboard.Api.Wire;

namespace WearWatch.Dashboard.Api;

/// <summary>The wire's shapes with the fields that follow from the columns of the files.</summary>
internal static class WireShapes
{
    /// <summary>Knows all shapes of <see cref="ApiJson"/>.</summary>
    public static IJsonTypeInfoResolver Resolver { get; } =
        ApiJson.Default
            .WithAddedModifier(CardJson.Shape).WithAddedModifier(ChainCardJson.Shape)
            .WithAddedModifier(ReadingJson.Shape).WithAddedModifier(ReadingEntryJson.Shape)
            .WithAddedModifier(EventJson.Shape).WithAddedModifier(EventEntryJson.Shape);

    private static readonly JsonSerializerOptions options = new(ApiJson.Default.Options) { TypeInfoResolver = Resolver };

    /// <summary>The shape of what comes in.</summary>
    public static JsonTypeInfo<T> Of<T>() => (JsonTypeInfo<T>)options.GetTypeInfo(typeof(T));
}
