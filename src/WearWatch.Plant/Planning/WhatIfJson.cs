namespace WearWatch.Plant.Planning;

/// <summary>Circumstances to plan under, on the wire; what is left out is as it is.</summary>
/// <param name="Weeks">How far to plan ahead.</param>
/// <param name="CrewPercent">Crew hours in percent of those planned.</param>
/// <param name="DeliveriesLateDays">Days by which everything on order comes later.</param>
/// <param name="Shutdown">The id of a shutdown that is moved.</param>
/// <param name="ShutdownDays">Days by which it is moved; negative for earlier.</param>
public sealed record WhatIfJson(
    int? Weeks = null, int? CrewPercent = null, int? DeliveriesLateDays = null, string? Shutdown = null, int? ShutdownDays = null)
{
    /// <summary>What is supposed, on the wire; null for nothing.</summary>
    public static WhatIfJson? Of(WhatIf? whatIf) => whatIf is null or { IsReal: true }
        ? null
        : new(whatIf.Weeks, whatIf.CrewPercent, whatIf.DeliveriesLateDays,
            whatIf.WindowId.Length > 0 ? whatIf.WindowId : null, whatIf.WindowDays);

    /// <summary>What is supposed.</summary>
    public WhatIf ToWhatIf() => new(CrewPercent ?? 100, DeliveriesLateDays ?? 0, Shutdown ?? "", ShutdownDays ?? 0, Weeks);
}
