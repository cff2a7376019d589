using WearWatch.Plant.Files;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Intake;

/// <summary>A reading of a part on its way in.</summary>
/// <param name="Told">What was told, as it was written.</param>
/// <param name="Key">Given by whoever sends it: the same key sent twice is stored once.</param>
/// <param name="ToldBy">Who or what told it.</param>
/// <param name="KeyOwner">Who made the key.</param>
public sealed record NewPartReading(PartAsWritten Told, string Key, string ToldBy, KeyOwner KeyOwner = default);
