namespace WearWatch.SensorSim.Files;

/// <summary>Writes <c>events.csv</c>: what happened and was written down.</summary>
public static class EventsFile
{
    /// <summary>Writes the file, for the whole history or for a stretch of live running that goes into an inbox.</summary>
    public static void Write(TextWriter writer, IEnumerable<MillEvent> events)
    {
        CsvText.Write(writer, "chain", "event", "taken_at", "counter_h_before", "counter_h_after", "lot", "oil_method",
            "oil_grade", "oil_amount_ml", "broke", "pitches_out", "take_up_mm");
        foreach (var happened in events)
        {
            CsvText.Write(
                writer,
                happened.Chain,
                NameOf(happened.Kind),
                CsvText.Moment(happened.At),
                CsvText.Number(happened.CounterBefore, 1),
                CsvText.Number(happened.CounterAfter, 1),
                happened.Lot,
                happened.Oil is null ? "" : "hand",
                happened.Oil?.Grade ?? "",
                CsvText.Number(happened.Oil?.AmountMl, 0),
                happened.Broke ? "yes" : "",
                CsvText.Number(happened.PitchesOut, 0),
                CsvText.Number(happened.TakeUpMm, 0));
        }
    }

    internal static string NameOf(MillEventKind kind) =>
        kind == MillEventKind.MeterReset ? "meter_reset" : kind.ToString().ToLowerInvariant();
}
