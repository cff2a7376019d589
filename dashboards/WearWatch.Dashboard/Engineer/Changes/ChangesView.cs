using WearWatch.Lives;
using WearWatch.Plant.Settings;

namespace WearWatch.Dashboard.Engineer.Changes;

/// <summary>What the page of rate changes shows.</summary>
/// <param name="Rows">The alarms, newest first, as many as a page holds.</param>
/// <param name="Total">How many alarms there were in all.</param>
/// <param name="Real">Those that a person found to be real, of those judged.</param>
/// <param name="Time">The plant's time.</param>
public sealed record ChangesView(IReadOnlyList<RateChangeLine> Rows, int Total, ObservedShare Real, PlantTime Time)
{
    /// <summary>How far the alarms can be trusted, in words.</summary>
    public string Trust => Real.Of == 0
        ? T["None has been judged yet. Look at the chain, then say whether the alarm was real: the record is kept."]
        : T[Phrase.Counted(
            Real.Hits,
            $"Of {Real.Of:#,0} judged, {Real.Hits:#,0} was real ({100 * Real.Fraction:0.0} %; 95 % band "
            + $"{EngineerWords.Band(Real.Band(0.95))}).",
            $"Of {Real.Of:#,0} judged, {Real.Hits:#,0} were real ({100 * Real.Fraction:0.0} %; 95 % band "
            + $"{EngineerWords.Band(Real.Band(0.95))}).")];
}
