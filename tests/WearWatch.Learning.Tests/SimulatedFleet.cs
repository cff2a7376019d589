using System.Globalization;
using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Learning.Tests;

/// <summary>The simulated fleet of tests/data/fleet-learning (see tests/data/SOURCES.md), taken in as the worker does.</summary>
internal static class SimulatedFleet
{
    /// <summary>Every fitted chain that has readings: more than the 200 positions, since some chains were replaced.</summary>
    public static IReadOnlyList<FleetChain> Chains { get; } = Read();

    private static FleetChain[] Read()
    {
        var readings = Rows("readings.csv").Select(ReadingOf).ToLookup(r => r.Chain);
        var events = Rows("events.csv").Select(EventOf).ToLookup(e => e.Chain);
        return
        [
            .. from card in Rows("chains.csv").Select(CardOf)
               from life in ChainHistory.Take(card, [.. readings[card.Name]], [.. events[card.Name]]).Lives
               where life.Observations.Count > 0
               select new FleetChain(card, life.Observations) { FittingKnown = life.FittingKnown }
        ];
    }

    private static ChainCard CardOf(Dictionary<string, string> row) => new()
    {
        Name = row["chain"],
        Line = row["line"],
        Position = row["position"],
        PitchMm = Number(row["pitch_mm"])!.Value,
        FittedCounter = Hours(row["fitted_counter_h"]),
        Duty = new Duty
        {
            RelativeLoad = Number(row["load_rel"]),
            SpeedMetresPerSecond = Number(row["speed_m_s"]),
            Lubrication = Enum.Parse<LubricationState>(row["lubrication"], ignoreCase: true),
            Dust = Enum.Parse<DustLevel>(row["dust"], ignoreCase: true),
        },
    };

    private static Reading ReadingOf(Dictionary<string, string> row) => new()
    {
        Chain = row["chain"],
        Counter = Hours(row["counter_h"]),
        Tool = Enum.Parse<Tool>(row["tool"], ignoreCase: true),
        Pitches = (int)Number(row["pitches"])!.Value,
        LengthMm = Number(row["length"])!.Value * (row["unit"] == "in" ? 25.4 : 1),
    };

    private static ChainEvent EventOf(Dictionary<string, string> row) => new()
    {
        Chain = row["chain"],
        Kind = row["event"] == "replacement" ? ChainEventKind.Replacement : ChainEventKind.MeterReset,
        CounterBefore = Hours(row["counter_h_before"]),
        CounterAfter = Hours(row["counter_h_after"]),
    };

    private static RunningHours? Hours(string text) => Number(text) is { } hours ? new RunningHours(hours) : null;

    private static double? Number(string text) => text.Length == 0 ? null : double.Parse(text, CultureInfo.InvariantCulture);

    private static IEnumerable<Dictionary<string, string>> Rows(string file)
    {
        var lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "data", "fleet-learning", file));
        var header = lines[0].Split(',');
        return lines.Skip(1).Select(line => header.Zip(line.Split(',')).ToDictionary(cell => cell.First, cell => cell.Second));
    }
}
