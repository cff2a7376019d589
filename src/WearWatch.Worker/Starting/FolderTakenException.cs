namespace WearWatch.Worker.Starting;

/// <summary>Another worker runs on the same data folder.</summary>
/// <param name="folder">The folder.</param>
/// <param name="why">What the system said.</param>
public sealed class FolderTakenException(string folder, Exception why)
    : Exception($"Another WearWatch works on {folder} already.", why);
