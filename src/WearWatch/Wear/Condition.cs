namespace WearWatch.Wear;

/// <summary>
/// How severe a chain's condition is. Its words, its colour and what it asks for are told by <see cref="ConditionWords"/>, since
/// they differ for a chain that lifts.
/// </summary>
public enum Condition
{
    /// <summary>Nothing is known of the chain that runs now, or too little.</summary>
    NotKnown,

    /// <summary>The wear is normal.</summary>
    WithinLimit,

    /// <summary>The end of its life must be planned.</summary>
    PlanASwap,

    /// <summary>The limit has been passed, or may be any day.</summary>
    SwapNow,
}
