namespace WearWatch.Storage.Rows;

/// <summary>How far a work order is. Up to done, each state follows the one before.</summary>
public enum WorkOrderState
{
    /// <summary>It is written, and not released.</summary>
    Open,

    /// <summary>It may be worked on.</summary>
    Released,

    /// <summary>It is being worked on.</summary>
    InWork,

    /// <summary>The work is done.</summary>
    Done,

    /// <summary>It is called off.</summary>
    Cancelled,
}
