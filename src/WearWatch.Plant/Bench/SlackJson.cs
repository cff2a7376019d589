namespace WearWatch.Plant.Bench;

/// <summary>What the elongation does to the chain's length.</summary>
/// <param name="ExtraLengthMm">How much longer the whole chain has become, in millimetres.</param>
/// <param name="TakeUpUsedMm">How far the take-up has to move for that, in millimetres.</param>
/// <param name="RemovablePitches">Pitches that can be taken out now.</param>
/// <param name="NextRemovalPct">The elongation in percent at which the next two can be.</param>
/// <param name="Advice">What to do; a chain that lifts is never shortened.</param>
public sealed record SlackJson(
    double ExtraLengthMm, double TakeUpUsedMm, int RemovablePitches, double NextRemovalPct, Phrase Advice);
