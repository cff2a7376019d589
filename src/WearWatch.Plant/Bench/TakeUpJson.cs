using WearWatch.Chains;

namespace WearWatch.Plant.Bench;

/// <summary>Where the take-up ends before the chain is worn, and what is done then.</summary>
/// <param name="AtPct">The elongation in percent.</param>
/// <param name="Task"><c>shorten</c> or <c>replace</c>.</param>
/// <param name="PitchesToRemove">How many pitches go then.</param>
/// <param name="Why">Why, in words.</param>
public sealed record TakeUpJson(double AtPct, string Task, int PitchesToRemove, Phrase Why)
{
    /// <summary>The wire form.</summary>
    public static TakeUpJson Of(TakeUpEnd end) => new(
        end.Percent, end.Task == TakeUpTask.Shorten ? "shorten" : "replace", end.PitchesToRemove, end.Why);
}
