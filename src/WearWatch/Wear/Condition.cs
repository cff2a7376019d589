namespace WearWatch.Wear;

/// <summary>A chain's condition in the words and colours that every screen uses (colours by IEC 60073).</summary>
public enum Condition
{
    /// <summary>Grey: nothing is known of the chain that runs now, or too little.</summary>
    NotKnown,

    /// <summary>Green: normal.</summary>
    WithinLimit,

    /// <summary>Yellow: a swap must be planned.</summary>
    PlanASwap,

    /// <summary>Red: the limit has been passed, or may be any day.</summary>
    SwapNow,
}
