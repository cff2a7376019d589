using WearWatch.Planning.Plans;

namespace WearWatch.Plant.Planning;

/// <summary>Other circumstances to look at a plan under: crews, deliveries, one shutdown moved.</summary>
/// <param name="CrewPercent">Crew hours in percent of those planned.</param>
/// <param name="DeliveriesLateDays">Days by which everything on order comes later.</param>
/// <param name="WindowId">A shutdown that is moved, or empty.</param>
/// <param name="WindowDays">Days by which it is moved; negative for earlier.</param>
public sealed record WhatIf(int CrewPercent = 100, int DeliveriesLateDays = 0, string WindowId = "", int WindowDays = 0)
{
    /// <summary>Whether it supposes nothing.</summary>
    public bool IsReal => this is { CrewPercent: 100, DeliveriesLateDays: 0 } && (WindowId.Length == 0 || WindowDays == 0);

    /// <summary>The input under these circumstances.</summary>
    public PlanInput Apply(PlanInput input) => input with
    {
        Windows = [.. input.Windows.Select(w => w with
        {
            CrewHours = w.CrewHours * CrewPercent / 100.0,
            Start = w.Id == WindowId ? w.Start.AddDays(WindowDays) : w.Start,
        })],
        Spares = [.. input.Spares
            .Select(s => s with { OnOrder = [.. s.OnOrder.Select(d => d with { Due = d.Due.AddDays(DeliveriesLateDays) })] })],
    };
}
