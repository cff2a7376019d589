using WearWatch.Chains;
using WearWatch.Running;

namespace WearWatch.Plant.Files;

/// <summary>A row of events.csv.</summary>
public static class EventText
{
    /// <summary>The event that a row describes; null when it is at fault.</summary>
    public static ChainEvent? Read(RowFields fields)
    {
        var chain = fields.Needed("chain", "write the chain's name.");
        fields.Needed("event", $"write one of {string.Join(", ", FileWords.Events.Keys)}.");
        var kind = fields.Word("event", FileWords.Events);
        var at = fields.Moment("taken_at");
        var beforeH = fields.Number("counter_h_before", 0, 1e7);
        var afterH = fields.Number("counter_h_after", 0, 1e7);
        var lot = fields.Label("lot");
        if (at is null && beforeH is null && afterH is null && fields.Faults.Count == 0)
            fields.Fault("taken_at", "Empty: an event needs its time or the hour counter.");
        var oil = new OilApplied(
            fields.Word("oil_method", FileWords.OilMethods), fields.Label("oil_grade"), fields.Number("oil_amount_ml", 0, OilApplied.MostMl));
        if (kind != ChainEventKind.Oiling && oil != OilApplied.Untold)
            fields.Fault("oil_method", "Only an oiling has a method, a grade or an amount: leave oil_method, oil_grade and oil_amount_ml empty.");
        if (fields.Faults.Count > 0) return null;

        return new ChainEvent
        {
            Chain = chain,
            Kind = kind!.Value,
            At = at,
            CounterBefore = beforeH is { } before ? new RunningHours(before) : null,
            CounterAfter = afterH is { } after ? new RunningHours(after) : null,
            Lot = lot,
            Oil = oil,
        };
    }
}
