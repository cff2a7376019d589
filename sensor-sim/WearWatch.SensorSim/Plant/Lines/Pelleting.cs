using static WearWatch.SensorSim.Plant.ChainSize;
using static WearWatch.SensorSim.Plant.Dust;
using static WearWatch.SensorSim.Plant.Lubrication;

namespace WearWatch.SensorSim.Plant.Lines;

/// <summary>What the board line leaves becomes pellets: dry, fine and abrasive dust.</summary>
internal static class Pelleting
{
    /// <summary>The line.</summary>
    public static ProductionLine Line { get; } = new("Pelleting", "PL", ShiftPattern.FiveDaysAndSaturdayMorning,
    [
        new("Dust receiving conveyor", Conveyor("M56", 100), 158, new(0.28, 0.35, Manual, Heavy)),
        new("Dust receiving drive", Roller("16B-1"), 80, new(0.46, 0.6, Manual, Heavy)),
        new("Hammer mill feeder", Roller("10B-1"), 96, new(0.38, 0.5, Manual, Heavy)),
        new("Conditioner drive", Roller("16A-1"), 72, new(0.48, 0.9, Auto, Moderate)) { TemperatureC = 40 },
        new("Pellet press 1 feeder", Ansi("50"), 88, new(0.4, 0.6, Manual, Heavy)) { TemperatureC = 35 },
        new("Pellet press 2 feeder", Ansi("50"), 88, new(0.4, 0.6, Poor, Heavy)) { TemperatureC = 35 },
        new("Pellet press 3 feeder", Ansi("50"), 88, new(0.4, 0.6, Manual, Heavy)) { TemperatureC = 35 },
        new("Hot pellet conveyor", DoublePitch("210A"), 236, new(0.24, 0.45, Manual, Moderate)) { TemperatureC = 55 },
        new("Pellet elevator", Conveyor("M112", 125), 312, new(0.36, 0.8, Auto, Moderate)),
        new("Pellet elevator drive", Ansi("100"), 90, new(0.48, 0.9, Auto, Moderate)),
        new("Cooler discharge grate", DoublePitch("208B"), 94, new(0.32, 0.12, Poor, Moderate)),
        new("Pellet screen drive", Roller("10A-1"), 102, new(0.42, 1.5, Auto, Moderate)) { HasSensors = true },
        new("Silo 1 reclaim chain", Conveyor("M80", 160), 142, new(0.34, 0.2, Manual, Moderate)),
        new("Silo 2 reclaim chain", Conveyor("M80", 160), 142, new(0.34, 0.2, Manual, Moderate)),
        new("Truck loading conveyor", Welded("WH82"), 148, new(0.3, 0.45, Manual, Heavy)),
        new("Bagging line indexer", Roller("08A-1"), 132, new(0.26, 0.4, Manual, Clean)) { OwnLimitPercent = 1.0 },
    ]);
}
