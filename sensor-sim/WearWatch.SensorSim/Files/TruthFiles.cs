using System.Globalization;
using WearWatch.SensorSim.Histories;

namespace WearWatch.SensorSim.Files;

/// <summary>Writes what is true in the mill and what nobody there knows: the files of the folder <c>truth</c>.</summary>
internal static class TruthFiles
{
    /// <summary>Writes <c>truth/readings.csv</c>: a row for each row of <c>readings.csv</c>, in the same order.</summary>
    public static void WriteReadings(TextWriter writer, IEnumerable<LiveReading> readings)
    {
        CsvText.Write(
            writer, "chain", "taken_at", "place", "chain_number", "running_h", "true_elongation_pct", "true_rate_pct_per_1000h",
            "limit_pct", "true_hours_to_limit", "slip", "counter_slip");
        foreach (var (record, truth) in readings)
        {
            CsvText.Write(
                writer,
                record.Chain,
                CsvText.Moment(record.TakenAt),
                record.Place,
                truth.ChainNumber.ToString(CultureInfo.InvariantCulture),
                CsvText.Number(truth.RunningHours, 2),
                CsvText.Number(truth.ElongationPercent, 5),
                CsvText.Number(truth.RatePercentPer1000Hours, 5),
                CsvText.Number(truth.LimitPercent, 2),
                CsvText.Number(truth.HoursToLimit, 1),
                truth.Slip.ToString(),
                truth.CounterSlip.ToString());
        }
    }

    /// <summary>Writes <c>truth/events.csv</c>: replacements with their lot and exchanged counters, recorded or not.</summary>
    public static void WriteEvents(TextWriter writer, IEnumerable<MillEvent> events)
    {
        CsvText.Write(writer, "chain", "event", "taken_at", "counter_h_before", "counter_h_after", "recorded", "lot");
        foreach (var happened in events.Where(e => e.Kind is MillEventKind.Replacement or MillEventKind.MeterReset))
        {
            CsvText.Write(
                writer,
                happened.Chain,
                EventsFile.NameOf(happened.Kind),
                CsvText.Moment(happened.At),
                CsvText.Number(happened.CounterBefore, 1),
                CsvText.Number(happened.CounterAfter, 1),
                happened.IsRecorded ? "1" : "0",
                happened.Lot);
        }
    }

    /// <summary>Writes <c>truth/chains.csv</c>: how it stands with each chain when the history ends.</summary>
    public static void WriteChains(TextWriter writer, IEnumerable<PositionHistory> histories)
    {
        CsvText.Write(
            writer, "chain", "running_h", "true_elongation_pct", "true_rate_pct_per_1000h", "limit_pct", "true_hours_to_limit",
            "lot", "outlook");
        foreach (var history in histories)
        {
            var (chain, now) = (history.CurrentChain, history.Span.EndHour);
            CsvText.Write(
                writer,
                history.Position.ChainName,
                CsvText.Number(chain.HoursAt(now), 2),
                CsvText.Number(chain.Path.ElongationAt(chain.HoursAt(now)), 5),
                CsvText.Number(chain.Path.RateAt(chain.HoursAt(now)), 5),
                CsvText.Number(chain.LimitPercent, 2),
                CsvText.Number(chain.HoursLeftAt(now), 1),
                chain.Lot,
                history.Fate.IsNeverMeasured ? "NeverMeasured" : history.Fate.Outlook.ToString());
        }
    }
}
