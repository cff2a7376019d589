namespace WearWatch.Storage.Safekeeping;

/// <summary>What a look through a memory found.</summary>
/// <param name="Path">The file, or the database's name.</param>
/// <param name="Rows">Rows by table.</param>
/// <param name="Faults">What is wrong with it, in plain words; empty when nothing is.</param>
public sealed record Checked(string Path, IReadOnlyDictionary<string, long> Rows, IReadOnlyList<string> Faults);
