namespace WearWatch.Plant.Bench;

/// <summary>How many pitches to measure.</summary>
/// <param name="Pitches">So many.</param>
/// <param name="LengthMm">Their nominal length.</param>
/// <param name="StandardUncertaintyPct">The standard uncertainty that is left then, in percent of it.</param>
/// <param name="GoodEnough">Whether that is less than a tenth of the limit.</param>
/// <param name="Advice">The same in words.</param>
public sealed record SpanProposalJson(
    int Pitches, double LengthMm, double StandardUncertaintyPct, bool GoodEnough, Phrase Advice);
