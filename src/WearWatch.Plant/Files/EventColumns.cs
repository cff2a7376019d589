using WearWatch.Chains;
using Column = WearWatch.Plant.Files.FileColumn<WearWatch.Chains.ChainEvent>;

namespace WearWatch.Plant.Files;

/// <summary>The columns of events.csv after the chain's name: the one list of what an event tells.</summary>
public static class EventColumns
{
    /// <summary>A longer note is a slip of the file.</summary>
    public const int LongestNote = 2000;

    /// <summary>All of them, in the order of the file.</summary>
    public static IReadOnlyList<Column> All { get; } =
    [
        Column.Word("event", FileWords.Events, e => e.Kind, (e, v) => v is { } kind ? e with { Kind = kind } : e) with
        {
            Meaning = "what happened, such as replacement, lubrication or inspection",
            Needed = $"write one of {string.Join(", ", FileWords.Events.Keys)}.",
        },
        Column.Moment("taken_at", e => e.At, (e, v) => e with { At = v }) with { Meaning = "when" },
        Column.Number("counter_h_before", 0, RowFields.MostCounterH, e => e.CounterBefore?.Hours,
                (e, v) => e with { CounterBefore = RowFields.Hours(v) })
            with { Meaning = "hour counter just before" },
        Column.Number("counter_h_after", 0, RowFields.MostCounterH, e => e.CounterAfter?.Hours,
                (e, v) => e with { CounterAfter = RowFields.Hours(v) })
            with { Meaning = "hour counter just after" },
        Column.Text("lot", e => e.Lot, (e, v) => e with { Lot = v }, always: false)
            with { Meaning = "supplier's lot of the chain that was fitted" },
        Column.Word("oil_method", FileWords.OilMethods, e => e.Oil.Method,
                (e, v) => e with { Oil = e.Oil with { Method = v } }, always: false)
            with { Meaning = "how it was lubricated" },
        Column.Text("oil_grade", e => e.Oil.Grade, (e, v) => e with { Oil = e.Oil with { Grade = v } }, always: false)
            with { Meaning = "with which oil" },
        Column.Number("oil_amount_ml", 0, OilApplied.MostMl, e => e.Oil.AmountMl,
                (e, v) => e with { Oil = e.Oil with { AmountMl = v } }, always: false)
            with { Meaning = "with how much" },
        Column.Flag("broke", e => e.Broke, (e, v) => e with { Broke = v })
            with { Meaning = "whether the chain that was taken off broke while it ran" },
        Column.Whole("pitches_out", 1, EventFacts.MostPitchesOut, e => e.PitchesOut,
                (e, v) => e with { PitchesOut = v }, always: false)
            with { Meaning = "pitches that were taken out" },
        Column.Whole("new_pitches", 1, EventFacts.MostPitches, e => e.NewPitches,
                (e, v) => e with { NewPitches = v }, always: false)
            with { Meaning = "pitches of the chain that was fitted" },
        Column.Whole("new_teeth", EventFacts.FewestTeeth, EventFacts.MostTeeth, e => e.NewTeeth,
                (e, v) => e with { NewTeeth = v }, always: false)
            with { Meaning = "teeth of the sprocket that was fitted" },
        Column.Number("take_up_mm", 0, EventFacts.MostTakeUpMm, e => e.TakeUpMm, (e, v) => e with { TakeUpMm = v }, always: false)
            with { Meaning = "where the take-up stood after it, from where a new chain is taut" },
        Column.Text("note", e => e.Note, (e, v) => e with { Note = v }, always: false, longest: LongestNote)
            with { Meaning = "what else was said" },
    ];
}
