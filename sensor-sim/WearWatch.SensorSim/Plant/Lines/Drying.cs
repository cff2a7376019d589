using static WearWatch.SensorSim.Plant.ChainSize;
using static WearWatch.SensorSim.Plant.Dust;
using static WearWatch.SensorSim.Plant.Lubrication;

namespace WearWatch.SensorSim.Plant.Lines;

/// <summary>Flakes are dried in a drum with hot gas: heat, dust, no stop for weeks.</summary>
internal static class Drying
{
    /// <summary>The line.</summary>
    public static ProductionLine Line { get; } = new("Drying", "DR", ShiftPattern.RoundTheClock,
    [
        new("Dryer drum drive", Roller("32A-3"), 108, new(0.54, 0.75, Auto, Moderate)) { TemperatureC = 42 },
        new("Dryer infeed screw drive", Roller("20A-2"), 76, new(0.48, 0.6, Auto, Moderate)) { TemperatureC = 38 },
        new("Dryer outfeed conveyor", Conveyor("M112", 160), 204, new(0.3, 0.35, Auto, Heavy)) { TemperatureC = 58 },
        new("Dryer outfeed drive", Roller("20B-2"), 92, new(0.46, 0.7, Auto, Heavy)) { TemperatureC = 45 },
        new("Cyclone dust conveyor", Conveyor("M56", 100), 176, new(0.26, 0.3, Manual, Heavy)) { TemperatureC = 50 },
        new("Cyclone airlock drive 1", Roller("12A-1"), 66, new(0.4, 0.4, Manual, Heavy)) { TemperatureC = 36 },
        new("Cyclone airlock drive 2", Roller("12A-1"), 66, new(0.4, 0.4, Manual, Heavy)) { TemperatureC = 36 },
        new("Ash drag chain", RoundLink(14, 50), 266, new(0.32, 0.08, Dry, Heavy)) { TemperatureC = 60 },
        new("Fuel feeder grate drive", Ansi("120"), 58, new(0.5, 0.15, Manual, Heavy)) { TemperatureC = 40 },
        new("Fuel bunker push floor drive", Roller("24A-1"), 80, new(0.52, 0.2, Manual, Moderate)) { TemperatureC = 30 },
        new("Dry flake screen drive", Roller("16B-1"), 98, new(0.42, 1.3, Auto, Heavy)) { TemperatureC = 34, HasSensors = true },
        new("Dry flake bin discharge", Conveyor("M160", 250), 74, new(0.34, 0.1, Manual, Heavy)) { TemperatureC = 32 },
        new("Dry flake bin drive", Roller("28B-1"), 70, new(0.48, 0.2, Manual, Heavy)) { TemperatureC = 32 },
        new("Bucket elevator to the bin", Conveyor("M224", 200), 268, new(0.38, 0.9, Auto, Heavy)) { TemperatureC = 36 },
        new("Bucket elevator drive", Roller("24B-2"), 86, new(0.5, 1.0, Auto, Heavy)) { TemperatureC = 33 },
        new("Fire damper chain hoist", Leaf("LL1222"), 84, new(0.36, 0.2, Manual, Moderate)) { TemperatureC = 28 },
    ]);
}
