using System.Text.Json.Serialization;

namespace WearWatch.Dashboard.Api.Wire;

/// <summary>A person's judgement of a notice: a real cause, a false alarm, or null to take it back.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
internal sealed record JudgementJson(bool? Real, string? By);
