namespace WearWatch.Storage.Engines;

/// <summary>What keeps the plant's memory from being read or written, as far as people can do something about it.</summary>
public enum StoreFault
{
    /// <summary>It is none of these.</summary>
    None,

    /// <summary>The disk is full.</summary>
    Full,

    /// <summary>The database cannot be reached, or somebody else writes for too long.</summary>
    Away,

    /// <summary>The user may not read or write it.</summary>
    NoRights,

    /// <summary>The file is not a database, or is damaged.</summary>
    Damaged,

    /// <summary>A newer program wrote it.</summary>
    Newer,
}
