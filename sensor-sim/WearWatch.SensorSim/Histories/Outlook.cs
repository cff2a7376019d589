namespace WearWatch.SensorSim.Histories;

/// <summary>How it stands with the chain that runs at the end of the history.</summary>
internal enum Outlook
{
    /// <summary>Far from its limit.</summary>
    WithinLimit,

    /// <summary>Weeks from its limit.</summary>
    PlanASwap,

    /// <summary>Past its limit.</summary>
    SwapNow,

    /// <summary>Fitted days ago and not measured yet.</summary>
    JustFitted,

    /// <summary>Wears two to three times as fast since some weeks or months.</summary>
    WearsFaster,

    /// <summary>One of several fitted from one bad lot.</summary>
    BadLot,
}
