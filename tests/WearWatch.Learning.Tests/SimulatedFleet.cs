using System.Globalization;
using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Learning.Tests;

/// <summary>A simulated fleet of tests/data (see tests/data/SOURCES.md), taken in as the worker does.</summary>
internal sealed class SimulatedFleet
{
    private SimulatedFleet(string folder)
    {
        Cards = [.. Rows(folder, "chains.csv").Select(CardOf)];
        Readings = Rows(folder, "readings.csv").Select(ReadingOf).ToLookup(r => r.Chain);
        Events = Rows(folder, "events.csv").Select(EventOf).ToLookup(e => e.Chain);
    }

    /// <summary>Every fitted chain of 200 positions that has readings: more than 200, since some were replaced.</summary>
    public static IReadOnlyList<FleetChain> Chains { get; } = new SimulatedFleet("fleet-learning").Taken();

    /// <summary>The first sixty of those positions, with questions to a backtest.</summary>
    public static SimulatedFleet Asked { get; } = new("fleet");

    public IReadOnlyList<ChainCard> Cards { get; }

    public ILookup<string, Reading> Readings { get; }

    public ILookup<string, ChainEvent> Events { get; }

    public static double? Number(string text) => text.Length == 0 ? null : double.Parse(text, CultureInfo.InvariantCulture);

    public static IEnumerable<Dictionary<string, string>> Rows(string folder, string file)
    {
        var lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "data", folder, file));
        var header = lines[0].Split(',');
        return lines.Skip(1).Select(line => header.Zip(line.Split(',')).ToDictionary(cell => cell.First, cell => cell.Second));
    }

    private FleetChain[] Taken() =>
    [
        .. from card in Cards
           from life in ChainHistory.Take(card, [.. Readings[card.Name]], [.. Events[card.Name]]).Lives
           where life.Observations.Count > 0
           select new FleetChain(card, life.Observations) { FittingKnown = life.FittingKnown }
    ];

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
}
