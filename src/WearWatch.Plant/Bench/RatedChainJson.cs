using System.Text.Json.Serialization;

namespace WearWatch.Plant.Bench;

/// <summary>A chain that carries the power by the classic rating.</summary>
/// <param name="ChainType">Its designation.</param>
/// <param name="RatedKw">What it may transmit, in kilowatts.</param>
/// <param name="SpeedMPerS">Its speed on the same teeth, in metres a second.</param>
/// <param name="OilFeed">The least way of oiling it at that speed, as a word of the files.</param>
public sealed record RatedChainJson(
    string ChainType, double RatedKw, [property: JsonPropertyName("speed_m_s")] double SpeedMPerS, string OilFeed);
