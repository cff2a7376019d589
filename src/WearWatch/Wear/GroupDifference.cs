using WearWatch.Phrases;

namespace WearWatch.Wear;

/// <summary>
/// By how much two chains of a group that runs together differ, in elongation and in length over the whole chain: parallel
/// strands, the pair of a conveyor or of a lift. They are matched when new and pull unevenly once they differ.
/// </summary>
/// <remarks>
/// No published limit of the difference was found: the plant sets one. Until then a difference that its uncertainty does not
/// explain is told. Matched sets: docs/references.md [26]; replaced together: [8], [22].
/// </remarks>
/// <param name="Least">The least worn chain.</param>
/// <param name="Most">The most worn chain.</param>
/// <param name="LimitMm">The largest difference of length that the plant allows, in millimetres; null for none.</param>
public sealed record GroupDifference(GroupMember Least, GroupMember Most, double? LimitMm)
{
    /// <summary>
    /// They count as unlike beyond so many standard deviations. It is asked at every visit of two chains' lives, and the answers
    /// hang together: simulated pairs that wear alike are told of in 1 of 100.
    /// </summary>
    private const double Deviations = 3.3;

    /// <summary>
    /// By how much two new chains differ, in percent: each is 0 to 0.15 % longer than nominal (from memory). Makers match pairs
    /// closer. Standard deviation of the difference of two rectangular distributions.
    /// </summary>
    private const double WhenNewPercent = 0.0612;

    private const double OneInTwenty = 1.645;

    /// <summary>Difference of their elongations, in percent.</summary>
    public double Percent => Most.ElongationPercent - Least.ElongationPercent;

    /// <summary>Standard deviation of that, in percent.</summary>
    public double StandardDeviationPercent => double.Hypot(Most.StandardDeviationPercent, Least.StandardDeviationPercent);

    /// <summary>Difference of their lengths over the whole chain, in millimetres; null where a length is not known.</summary>
    public double? LengthMm => Length is { } mm ? mm * Percent / 100 : null;

    /// <summary>Expanded uncertainty of that, k = 2, in millimetres.</summary>
    public double? ExpandedUncertaintyMm => Length is { } mm ? 2 * mm * StandardDeviationPercent / 100 : null;

    /// <summary>Whether they differ by more than the uncertainty and the tolerance of new chains explain.</summary>
    public bool IsUneven => Percent > Deviations * double.Hypot(StandardDeviationPercent, WhenNewPercent);

    /// <summary>Whether the plant's limit may be passed: with more than one chance in twenty.</summary>
    public bool IsAtLimit => LimitMm is { } limit && Length is { } mm
        && mm * (Percent + OneInTwenty * StandardDeviationPercent) / 100 >= limit
        && Percent > Deviations * StandardDeviationPercent;

    private double? Length => (Least.LengthMm, Most.LengthMm) is ({ } a, { } b) ? Math.Min(a, b) : null;

    /// <summary>The two chains of a group that differ most; null where fewer than two are measured.</summary>
    /// <param name="members">The chains that are measured.</param>
    /// <param name="limitMm">The largest difference of length that the plant allows, in millimetres.</param>
    public static GroupDifference? Of(IReadOnlyCollection<GroupMember> members, double? limitMm) => members.Count < 2
        ? null
        : new(members.MinBy(m => m.ElongationPercent)!, members.MaxBy(m => m.ElongationPercent)!, limitMm);

    /// <summary>What asks for attention; null for nothing.</summary>
    public Notice? ToNotice() => !IsUneven && !IsAtLimit ? null : new(
        NoticeKind.GroupDiffers, IsAtLimit, $"{Difference} {Against}",
        $"Measure both again at one visit, and look for the cause: alignment, load, oil. Shorten or replace {Least.Name} and "
        + $"{Most.Name} together, never one alone.");

    private Phrase Difference => LengthMm is { } mm
        ? Phrase.Of($"{Most.Name} is at {Most.ElongationPercent:0.00} %, {Least.Name} at {Least.ElongationPercent:0.00} %: "
            + $"{mm:0.#} mm apart over the whole chain (± {ExpandedUncertaintyMm:0.#} mm).")
        : $"{Most.Name} is at {Most.ElongationPercent:0.00} %, {Least.Name} at {Least.ElongationPercent:0.00} %: more than their "
            + $"uncertainty explains.";

    private Phrase Against => LimitMm is { } limit
        ? Phrase.Of($"The plant allows {limit:0.#} mm.")
        : $"No limit of the difference is set: set one in the master data.";
}
