using System.Text.Json.Serialization;

namespace WearWatch.Dashboard.Api.Wire;

/// <summary>
/// A reading on its way in, its facts by the names of readings.csv. The length is told as text in its unit (<c>1219.4</c>,
/// <c>48 3/16</c>), by caliper as inside and outside of the end rollers, or as a number in millimetres.
/// </summary>
/// <remarks>
/// The maker is whoever is signed in; a maker or a plant that is told here is only compared, and another one refused.
/// </remarks>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
internal sealed record ReadingEntryJson
{
    public string? Chain { get; init; }

    public DateTimeOffset? TakenAt { get; init; }

    public double? CounterH { get; init; }

    public string? Tool { get; init; }

    public string? Place { get; init; }

    public int? Pitches { get; init; }

    public string? Length { get; init; }

    public string? Unit { get; init; }

    public double? LengthMm { get; init; }

    public string? Inside { get; init; }

    public string? Outside { get; init; }

    public double? TemperatureC { get; init; }

    public int? Strand { get; init; }

    public bool? Taut { get; init; }

    public double? LoadN { get; init; }

    public double? TakeUpMm { get; init; }

    public bool? Confirmed { get; init; }

    public string? ToldBy { get; init; }

    public int? MakerId { get; init; }

    public string? Plant { get; init; }
}
