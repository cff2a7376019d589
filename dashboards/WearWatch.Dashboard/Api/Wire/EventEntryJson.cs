using System.Text.Json.Serialization;

namespace WearWatch.Dashboard.Api.Wire;

/// <summary>An event on its way in; its facts by the names of events.csv.</summary>
/// <remarks>
/// The maker is whoever is signed in; a maker or a plant that is told here is only compared, and another one refused.
/// </remarks>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
internal sealed record EventEntryJson
{
    public string? Chain { get; init; }

    public string? Event { get; init; }

    public DateTimeOffset? TakenAt { get; init; }

    public double? CounterHBefore { get; init; }

    public double? CounterHAfter { get; init; }

    public string? Note { get; init; }

    public string? Lot { get; init; }

    public string? OilMethod { get; init; }

    public string? OilGrade { get; init; }

    public double? OilAmountMl { get; init; }

    public bool? Broke { get; init; }

    public int? PitchesOut { get; init; }

    public double? TakeUpMm { get; init; }

    public string? ToldBy { get; init; }

    public int? MakerId { get; init; }

    public string? Plant { get; init; }
}
