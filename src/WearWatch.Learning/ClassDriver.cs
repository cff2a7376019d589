namespace WearWatch.Learning;

/// <summary>What can be changed on all chains of a class.</summary>
public enum ClassDriver
{
    /// <summary>Less or more load.</summary>
    Load,

    /// <summary>Slower or faster.</summary>
    Speed,

    /// <summary>Lubricated more or less often.</summary>
    OilInterval,

    /// <summary>Lubricated automatically.</summary>
    Lubricator,

    /// <summary>Enclosed, so that no dust reaches it.</summary>
    Enclosure,
}
