using WearWatch.Dashboard.Kit.Lifting;
using WearWatch.Lifting.Examinations;

namespace WearWatch.Dashboard.Api.Wire;

/// <summary>
/// A chain that lifts: how bad the worst is (nothing_stands, attend, examine_first, out_of_use), in a few words and in sentences.
/// </summary>
internal sealed record LiftingNowJson(string Verdict, string Words, string Brief, IReadOnlyList<string> Faults, string Due)
{
    /// <summary>What no figure says of such a chain.</summary>
    public string Caution { get; } = T[Chains.Caution.LiftingInBrief];

    /// <summary>The wire form; null for a chain that does not lift.</summary>
    public static LiftingNowJson? Of(LiftingNow? now) => now is null
        ? null
        : new LiftingNowJson(Tokens.Of(now.Verdict), T[LiftingVerdicts.Words(now.Verdict)], T[now.Brief],
            [.. now.Words.Select(words => T[words])], T[now.Due]);
}
