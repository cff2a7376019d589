namespace WearWatch.Storage.Rows;

/// <summary>What a person or a machine may do; roles add up, and none of them lets read only.</summary>
[Flags]
public enum PersonRoles
{
    None = 0,

    /// <summary>Measures, oils, records what was done.</summary>
    Technician = 1,

    /// <summary>Keeps the register and plans swaps.</summary>
    Planner = 2,

    /// <summary>Keeps the register, judges alarms and forecasts.</summary>
    Engineer = 4,

    /// <summary>Looks after people, keys, tablets and the plant's settings.</summary>
    Administrator = 8,
}
