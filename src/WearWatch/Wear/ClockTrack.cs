namespace WearWatch.Wear;

/// <summary>The accounts of a chain on one wear clock, with how well that clock has explained the readings.</summary>
/// <param name="OnsetPercent">
/// Onset of the clock; null is the even clock, which serves every onset that the chain has not yet reached.
/// </param>
/// <param name="LogEvidence">ln of the probability density of all readings on this clock, <c>sum ln J</c> added.</param>
/// <param name="Accounts">The accounts, heaviest first.</param>
public sealed record ClockTrack(double? OnsetPercent, double LogEvidence, IReadOnlyList<Hypothesis> Accounts)
{
    /// <summary>Whether this is the clock of the plant's own curve.</summary>
    public bool OnCurve { get; init; }
}
