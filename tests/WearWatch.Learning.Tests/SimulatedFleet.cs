using System.Globalization;
using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Learning.Tests;

/// <summary>The simulated fleet of tests/data/fleet-learning (see tests/data/SOURCES.md).</summary>
internal static class SimulatedFleet
{
    /// <summary>Its chains without events and with a counter that only rises: there hours since fitting are a plain difference.</summary>
    public static IReadOnlyList<FleetChain> UndisturbedChains { get; } = Read();

    private static FleetChain[] Read()
    {
        var readings = Rows("readings.csv").ToLookup(r => r["chain"]);
        var disturbed = Rows("events.csv").Select(r => r["chain"]).ToHashSet();
        return
        [
            .. from row in Rows("chains.csv")
               where !disturbed.Contains(row["chain"])
               let card = CardOf(row)
               let taken = readings[card.Name].ToArray()
               let counters = taken.Select(r => Number(r["counter_h"])!.Value).ToArray()
               where counters.SequenceEqual(counters.Order())
               select new FleetChain(card, [.. ObservationsOf(card, taken)])
        ];
    }

    private static ChainCard CardOf(Dictionary<string, string> row) => new()
    {
        Name = row["chain"],
        Line = row["line"],
        Position = row["position"],
        PitchMm = Number(row["pitch_mm"])!.Value,
        FittedCounter = Number(row["fitted_counter_h"]) is { } counter ? new RunningHours(counter) : null,
        Duty = new Duty
        {
            RelativeLoad = Number(row["load_rel"]),
            SpeedMetresPerSecond = Number(row["speed_m_s"]),
            Lubrication = Enum.Parse<LubricationState>(row["lubrication"], ignoreCase: true),
            Dust = Enum.Parse<DustLevel>(row["dust"], ignoreCase: true),
        },
    };

    private static IEnumerable<Observation> ObservationsOf(ChainCard card, Dictionary<string, string>[] readings)
    {
        for (var i = 0; i < readings.Length; i++)
        {
            var row = readings[i];
            var lengthMm = Number(row["length"])!.Value * (row["unit"] == "in" ? 25.4 : 1);
            var pitches = (int)Number(row["pitches"])!.Value;
            var outcome = Gauge.Measure(card.PitchMm, pitches, lengthMm, Enum.Parse<Tool>(row["tool"], ignoreCase: true));
            if (outcome is not GaugeOutcome.Measured { Elongation: var e } || e.Percent is < -1 or > 8) continue;
            var hours = Number(row["counter_h"])!.Value - (card.FittedCounter?.Hours ?? 0);
            yield return new Observation(hours, e.Percent, e.ScatterPercent, i);
        }
    }

    private static double? Number(string text) => text.Length == 0 ? null : double.Parse(text, CultureInfo.InvariantCulture);

    private static IEnumerable<Dictionary<string, string>> Rows(string file)
    {
        var lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "data", "fleet-learning", file));
        var header = lines[0].Split(',');
        return lines.Skip(1).Select(line => header.Zip(line.Split(',')).ToDictionary(cell => cell.First, cell => cell.Second));
    }
}
