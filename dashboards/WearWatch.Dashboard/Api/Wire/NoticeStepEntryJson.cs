using System.Text.Json.Serialization;

namespace WearWatch.Dashboard.Api.Wire;

/// <summary>What a person does about a notice.</summary>
/// <param name="Step"><c>acknowledged</c>, <c>assigned</c>, <c>snoozed</c>, <c>commented</c> or <c>woken</c>.</param>
/// <param name="Person">Of an assignment: to whom; empty for nobody.</param>
/// <param name="Until">Of <c>snoozed</c>: the day of the plant on which it asks again.</param>
/// <param name="Comment">What is said beside it.</param>
/// <param name="By">Who does it.</param>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
internal sealed record NoticeStepEntryJson(string? Step, string? Person, DateOnly? Until, string? Comment, string? By);
