using System.Text.Json.Serialization;
using WearWatch.Plant.Planning;

namespace WearWatch.Plant.Webhooks;

/// <summary>The wire shapes of what webhooks say; names as in the API.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.SnakeCaseLower)]
[JsonSerializable(typeof(NoticeEventJson))]
[JsonSerializable(typeof(ReplacementEventJson))]
[JsonSerializable(typeof(StopPackageJson))]
public sealed partial class WebhookJson : JsonSerializerContext;
