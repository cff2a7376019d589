namespace WearWatch.Plant.Bench;

/// <summary>The least way of bringing the oil there that will do.</summary>
/// <param name="Kind">The way, as a word of the files.</param>
/// <param name="ManualUpToMS">Up to this speed of the chain it may be oiled by hand, in metres a second.</param>
/// <param name="BathUpToMS">Up to this speed a bath will do, in metres a second.</param>
/// <param name="Source">Where the speeds are from.</param>
/// <param name="Verified">Whether they were read there; false for recalled ones.</param>
public sealed record OilFeedJson(string Kind, double ManualUpToMS, double BathUpToMS, string Source, bool Verified);
