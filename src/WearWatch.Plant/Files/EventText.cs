using WearWatch.Chains;

namespace WearWatch.Plant.Files;

/// <summary>A row of events.csv.</summary>
public static class EventText
{
    /// <summary>The event that a row describes; null when it is at fault.</summary>
    public static ChainEvent? Read(RowFields fields)
    {
        var chain = fields.Needed("chain", $"write the chain's name.");
        var told = fields.Fill(EventColumns.All, new ChainEvent { Chain = chain, Kind = default });
        if (fields.Faults.Count > 0) return null;
        if (told is { At: null, CounterBefore: null, CounterAfter: null })
            fields.Fault("taken_at", $"Empty: an event needs its time or the hour counter.");
        foreach (var (field, reason) in EventFacts.Faults(told)) fields.Fault(field, reason);
        return fields.Faults.Count > 0 ? null : told;
    }
}
