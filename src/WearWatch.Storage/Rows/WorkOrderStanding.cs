namespace WearWatch.Storage.Rows;

/// <summary>What became of a report on a work order.</summary>
public enum WorkOrderStanding
{
    /// <summary>It is stored, and not worked off yet.</summary>
    Received,

    /// <summary>It counts.</summary>
    Used,

    /// <summary>It contradicts what is known here: a person settles it.</summary>
    InConflict,

    /// <summary>A person took it, against what was known here.</summary>
    TheirsTaken,

    /// <summary>A person kept what was known here.</summary>
    OursKept,
}
