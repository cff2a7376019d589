using WearWatch.Gauging;
using WearWatch.Units;

namespace WearWatch.Plant.Intake;

/// <summary>A reading on its way in, as it was told.</summary>
/// <param name="Key">Given by whoever sends it: the same key sent twice is stored once.</param>
/// <param name="Chain">The chain's name.</param>
/// <param name="TakenAt">When it was taken; this or the counter is needed.</param>
/// <param name="CounterH">The hour counter when it was taken.</param>
/// <param name="Tool">With what it was measured.</param>
/// <param name="Place">The marked section of the chain, or empty.</param>
/// <param name="Pitches">Number of pitches in the length.</param>
/// <param name="Length">
/// The length as it was typed, such as <c>1533.5</c>, <c>60 3/8</c> or, by caliper, <c>258.6 inside 282.4 outside</c>;
/// several of one place with semicolons.
/// </param>
/// <param name="Unit">The unit of the length.</param>
/// <param name="TemperatureC">Temperature of the chain in degrees Celsius, or null.</param>
/// <param name="ToldBy">Who or what told it.</param>
/// <param name="Confirmed">Whether a person has already said yes to a length or counter that looks wrong.</param>
/// <param name="Strand">Which strand of a multi-strand chain, from 1, or null.</param>
/// <param name="Held">How the chain was held meanwhile.</param>
/// <param name="LengthUncertaintyMm">Standard uncertainty of the length, where sensors tell it; null for what is usual for the tool.</param>
public sealed record NewReading(
    string Key, string Chain, DateTimeOffset? TakenAt, double? CounterH, Tool Tool, string Place, int Pitches, string Length,
    LengthUnit Unit, double? TemperatureC, string ToldBy, bool Confirmed = false, int? Strand = null,
    Held Held = default, double? LengthUncertaintyMm = null);
