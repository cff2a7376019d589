using WearWatch.Planning.Plans;
using WearWatch.Plant.Settings;

namespace WearWatch.Plant.Planning;

/// <summary>Other circumstances to look at a plan under: crews, deliveries, one shutdown moved, another horizon.</summary>
/// <param name="CrewPercent">Crew hours in percent of those planned, 0 to 500.</param>
/// <param name="DeliveriesLateDays">Days by which everything on order comes later, 0 to 365.</param>
/// <param name="WindowId">A shutdown that is moved, or empty.</param>
/// <param name="WindowDays">Days by which it is moved, at most 365; negative for earlier.</param>
/// <param name="Weeks">How far to plan ahead, 1 to 104 weeks; null for what the plant has set.</param>
public sealed record WhatIf(
    int CrewPercent = 100, int DeliveriesLateDays = 0, string WindowId = "", int WindowDays = 0, int? Weeks = null)
{
    /// <summary>Whether it supposes nothing.</summary>
    public bool IsReal =>
        this is { CrewPercent: 100, DeliveriesLateDays: 0, Weeks: null } && (WindowId.Length == 0 || WindowDays == 0);

    /// <summary>What cannot be supposed, by the names on the wire; empty when it can.</summary>
    public IReadOnlyList<Refusal> Faults =>
    [
        .. Fault(CrewPercent is < 0 or > 500, "crew_percent", $"0 to 500 percent of the crews' hours."),
        .. Fault(DeliveriesLateDays is < 0 or > 365, "deliveries_late_days", $"0 to 365 days."),
        .. Fault(WindowDays is < -365 or > 365, "shutdown_days", $"At most 365 days, negative for earlier."),
        .. Fault(Weeks is < 1 or > 104, "weeks", $"Plan 1 to 104 weeks ahead."),
    ];

    private static Refusal[] Fault(bool isOff, string field, Phrase reason) => isOff ? [new Refusal(field, reason)] : [];

    /// <summary>The input under these circumstances; how far it reaches is decided where it is gathered.</summary>
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
