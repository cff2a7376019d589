namespace WearWatch.Lives;

/// <summary>On which scale the normal approximation of a survival band is made.</summary>
public enum BandKind
{
    /// <summary>On the share itself; poor near 0 and 1, where it is cut off.</summary>
    Plain,

    /// <summary>On the logarithm of the share.</summary>
    Log,

    /// <summary>On ln(-ln share): stays between 0 and 1 by itself and is the best of the three in small groups.</summary>
    LogLog,
}
