namespace WearWatch.Plant.Bench;

/// <summary>A limit that holds besides the governing one, or is advice.</summary>
/// <param name="LimitPct">The elongation in percent.</param>
/// <param name="Reason">Why, as a word of the files.</param>
/// <param name="Source">Where it is from.</param>
/// <param name="Rule">The rule in words.</param>
/// <param name="Verified">Whether it was read in the source; false for a recalled one.</param>
public sealed record LimitRuleJson(double LimitPct, string Reason, string Source, Phrase Rule, bool Verified);
