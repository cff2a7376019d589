using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Lifting;

/// <summary>A scanned paper on its way in.</summary>
/// <param name="Key">Given by whoever sends it: the same key sent twice is stored once.</param>
/// <param name="Chain">The chain's name.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Name">The file's name.</param>
/// <param name="Content">The file.</param>
/// <param name="ToldBy">Who sends it.</param>
public sealed record NewLiftingFile(
    string Key, string Chain, LiftingFileKind Kind, string Name, byte[] Content, string ToldBy);
