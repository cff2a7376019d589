using WearWatch.Chains.Families;

namespace WearWatch.Plant.Intake;

/// <summary>A photo of a finding on its way in.</summary>
/// <param name="Key">Given by whoever sends it: the same key sent twice is stored once.</param>
/// <param name="LookKey">The key of the look that it belongs to.</param>
/// <param name="Point">What it shows.</param>
/// <param name="File">What was sent.</param>
/// <param name="ToldBy">Who told it.</param>
public sealed record NewPhoto(string Key, string LookKey, InspectionPoint Point, byte[] File, string ToldBy);
