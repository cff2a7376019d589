using System.Globalization;
using WearWatch.SensorSim.Histories;

namespace WearWatch.SensorSim.Files;

/// <summary>Writes what is true in the mill and what nobody there knows: the files of the folder <c>truth</c>.</summary>
internal static class TruthFiles
{
    /// <summary>Writes <c>truth/readings.csv</c>: a row for each row of <c>readings.csv</c>, in the same order.</summary>
    public static void WriteReadings(TextWriter writer, IEnumerable<LiveReading> readings)
    {
        CsvRow.Write(
            writer, "chain", "taken_at", "place", "chain_number", "running_h", "true_elongation_pct", "true_rate_pct_per_1000h",
            "limit_pct", "true_hours_to_limit", "slip");
        foreach (var (record, truth) in readings)
        {
            CsvRow.Write(
                writer,
                record.Chain,
                CsvRow.Moment(record.TakenAt),
                record.Place,
                truth.ChainNumber.ToString(CultureInfo.InvariantCulture),
                CsvRow.Number(truth.RunningHours, 2),
                CsvRow.Number(truth.ElongationPercent, 5),
                CsvRow.Number(truth.RatePercentPer1000Hours, 5),
                CsvRow.Number(truth.LimitPercent, 2),
                CsvRow.Number(truth.HoursToLimit, 1),
                truth.Slip.ToString());
        }
    }

    /// <summary>Writes <c>truth/events.csv</c>: replacements with their lot and exchanged counters, recorded or not.</summary>
    public static void WriteEvents(TextWriter writer, IEnumerable<MillEvent> events)
    {
        CsvRow.Write(writer, "chain", "event", "taken_at", "counter_h_before", "counter_h_after", "recorded", "lot");
        foreach (var happened in events.Where(e => e.Kind is MillEventKind.Replacement or MillEventKind.MeterReset))
        {
            CsvRow.Write(
                writer,
                happened.Chain,
                EventsFile.NameOf(happened.Kind),
                CsvRow.Moment(happened.At),
                CsvRow.Number(happened.CounterBefore, 1),
                CsvRow.Number(happened.CounterAfter, 1),
                happened.IsRecorded ? "1" : "0",
                happened.Lot);
        }
    }

    /// <summary>Writes <c>truth/chains.csv</c>: how it stands with each chain when the history ends.</summary>
    public static void WriteChains(TextWriter writer, IEnumerable<PositionHistory> histories)
    {
        CsvRow.Write(
            writer, "chain", "running_h", "true_elongation_pct", "true_rate_pct_per_1000h", "limit_pct", "true_hours_to_limit",
            "lot", "outlook");
        foreach (var history in histories)
        {
            var (chain, now) = (history.CurrentChain, history.Span.EndHour);
            CsvRow.Write(
                writer,
                history.Position.ChainName,
                CsvRow.Number(chain.HoursAt(now), 2),
                CsvRow.Number(chain.Path.ElongationAt(chain.HoursAt(now)), 5),
                CsvRow.Number(chain.Path.RateAt(chain.HoursAt(now)), 5),
                CsvRow.Number(chain.LimitPercent, 2),
                CsvRow.Number(chain.HoursLeftAt(now), 1),
                chain.Lot,
                history.Fate.IsNeverMeasured ? "NeverMeasured" : history.Fate.Outlook.ToString());
        }
    }
}
