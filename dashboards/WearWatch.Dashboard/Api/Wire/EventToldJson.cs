using System.Text.Json.Serialization;

namespace WearWatch.Dashboard.Api.Wire;

/// <summary>An event on its way in.</summary>
/// <remarks>The maker is whoever is signed in; a maker or a plant that is told here is only compared, and another one refused.</remarks>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
internal sealed record EventToldJson(
    string? Chain, string? Event, DateTimeOffset? TakenAt, double? CounterHBefore, double? CounterHAfter, string? Note, string? ToldBy,
    string? Lot, string? OilMethod = null, string? OilGrade = null, double? OilAmountMl = null,
    int? MakerId = null, string? Plant = null);
