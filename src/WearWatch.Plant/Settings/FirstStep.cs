namespace WearWatch.Plant.Settings;

/// <summary>What a new plant enters first, in its order.</summary>
public enum FirstStep
{
    /// <summary>Where the plant is: its time zone.</summary>
    Zone,

    /// <summary>When it runs.</summary>
    Shifts,

    /// <summary>Its chains.</summary>
    Chains,

    /// <summary>Who works with it.</summary>
    People,

    /// <summary>When its lines stand still.</summary>
    Shutdowns,

    /// <summary>What is in the store.</summary>
    Spares,

    /// <summary>The first measuring of every chain.</summary>
    FirstRound,
}
