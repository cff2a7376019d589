using static WearWatch.SensorSim.Plant.ChainSize;
using static WearWatch.SensorSim.Plant.Dust;
using static WearWatch.SensorSim.Plant.Lubrication;

namespace WearWatch.SensorSim.Plant.Lines;

/// <summary>Logs come in, are washed, debarked and cut: wet, sandy and rough.</summary>
internal static class Debarking
{
    /// <summary>The line.</summary>
    public static ProductionLine Line { get; } = new("Debarking", "DB", ShiftPattern.FiveDays,
    [
        new("Log deck 1 cross chain", Welded("WH132"), 84, new(0.34, 0.18, Manual, Heavy)),
        new("Log deck 2 cross chain", Welded("WH132"), 84, new(0.34, 0.18, Manual, Heavy)),
        new("Log haul to the drum", RoundLink(18, 64), 310, new(0.4, 0.3, Dry, Heavy)),
        new("Log haul drive", Roller("32B-1"), 74, new(0.48, 0.55, Manual, Heavy)),
        new("Drum support drive north", Roller("28A-2"), 96, new(0.52, 0.9, Auto, Moderate)),
        new("Drum support drive south", Roller("28A-2"), 96, new(0.52, 0.9, Auto, Moderate)),
        new("Drum outfeed chain bed", Welded("WH124"), 132, new(0.36, 0.22, Poor, Heavy)),
        new("Bark scraper conveyor", Conveyor("M112", 160), 188, new(0.3, 0.25, Manual, Heavy)),
        new("Bark scraper drive", Roller("20B-1"), 82, new(0.42, 0.5, Manual, Heavy)),
        new("Stone trap drag chain", Welded("WH110"), 66, new(0.3, 0.15, Dry, Heavy)),
        new("Bark shredder infeed", Welded("WH78"), 118, new(0.38, 0.25, Manual, Heavy)),
        new("Cross-cut saw infeed chain", Conveyor("M80", 125), 124, new(0.33, 0.4, Manual, Moderate)),
        new("Cross-cut saw infeed drive", Ansi("80"), 90, new(0.46, 0.7, Manual, Moderate)),
        new("Log kicker timing chain", Roller("16A-1"), 68, new(0.28, 0.45, Auto, Moderate)) { OwnLimitPercent = 1.0 },
        new("Log step feeder left", DoublePitch("224B"), 72, new(0.4, 0.3, Manual, Heavy)) { OwnLimitPercent = 1.2 },
        new("Log step feeder right", DoublePitch("224B"), 72, new(0.4, 0.3, Manual, Heavy)) { OwnLimitPercent = 1.2 },
    ]);
}
