using System.Text.Json.Serialization;

namespace WearWatch.Dashboard.Api.Wire;

/// <summary>A reading on its way in. The length is told as text in its unit (<c>1219.4</c>, <c>48 3/16</c>), by caliper as inside and outside of the end rollers, or as
/// a number in millimetres.</summary>
/// <remarks>The maker is whoever is signed in; a maker or a plant that is told here is only compared, and another one refused.</remarks>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
internal sealed record ReadingToldJson(
    string? Chain, DateTimeOffset? TakenAt, double? CounterH, string? Tool, string? Place, int? Pitches, string? Length, string? Unit, double? LengthMm,
    double? TemperatureC, bool? Confirmed, string? ToldBy, string? Inside, string? Outside, int? Strand, bool? Taut, double? LoadN,
    int? MakerId, string? Plant);
