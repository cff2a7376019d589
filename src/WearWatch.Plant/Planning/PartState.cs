namespace WearWatch.Plant.Planning;

/// <summary>How the parts of a swap stand.</summary>
public enum PartState
{
    /// <summary>The store keeps no record of them.</summary>
    NotOnRecord,

    /// <summary>On the shelf or on order in time.</summary>
    InTime,

    /// <summary>To be ordered; an ordinary order still arrives.</summary>
    ToOrder,

    /// <summary>Only haste brings them in time.</summary>
    Express,

    /// <summary>Not even haste brings them in time.</summary>
    CannotCome,
}
