using System.Text.Json.Serialization;

namespace WearWatch.Dashboard.Api.Wire;

/// <summary>A person's word on a report that contradicts what is known here.</summary>
/// <param name="Take"><c>theirs</c>: the report counts. <c>ours</c>: what is known here stays.</param>
/// <param name="By">Who says so.</param>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
internal sealed record SettlementJson(string? Take, string? By);
