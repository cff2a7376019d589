using System.Text.Json;
using System.Text.Json.Serialization;

namespace WearWatch.Plant.Bench;

/// <summary>The wire shapes of the bench's answers, for the command line and the API alike.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.SnakeCaseLower, WriteIndented = true)]
[JsonSerializable(typeof(GaugeJson))]
[JsonSerializable(typeof(LinkGaugeJson))]
[JsonSerializable(typeof(LimitJson))]
[JsonSerializable(typeof(DriveJson))]
[JsonSerializable(typeof(ChainOilJson))]
[JsonSerializable(typeof(ChainTypePageJson))]
[JsonSerializable(typeof(ChainTypeJson))]
public sealed partial class BenchJson : JsonSerializerContext
{
    /// <summary>What phrases say in English, for the command line.</summary>
    public static BenchJson InEnglish { get; } = new(new JsonSerializerOptions
    {
        PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower,
        WriteIndented = true,
        Converters = { new SentenceConverter(phrase => phrase.ToString()) },
    });
}
