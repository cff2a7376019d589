namespace WearWatch.Storage;

/// <summary>
/// Tells whoever listens in this process which chains have a new assessment, or another person at their round, so that screens
/// change without reload.
/// </summary>
/// <remarks>Thread-safe. Listeners are called on the teller's thread and must return at once.</remarks>
public sealed class PlantNews
{
    /// <summary>Raised after the change is committed, with the ids of the chains concerned.</summary>
    public event Action<IReadOnlyCollection<int>>? ChainsChanged;

    /// <summary>Tells all listeners.</summary>
    public void Tell(IReadOnlyCollection<int> chainIds)
    {
        if (chainIds.Count > 0) ChainsChanged?.Invoke(chainIds);
    }
}
