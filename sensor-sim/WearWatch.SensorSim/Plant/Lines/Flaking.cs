using static WearWatch.SensorSim.Plant.ChainSize;
using static WearWatch.SensorSim.Plant.Dust;
using static WearWatch.SensorSim.Plant.Lubrication;

namespace WearWatch.SensorSim.Plant.Lines;

/// <summary>Logs become flakes for the board: knives, fine dust, moist wood.</summary>
internal static class Flaking
{
    /// <summary>The line.</summary>
    public static ProductionLine Line { get; } = new("Flaking", "FL", ShiftPattern.SixDays,
    [
        new("Flaker 1 log infeed chain", Conveyor("M160", 160), 116, new(0.36, 0.2, Auto, Moderate)),
        new("Flaker 2 log infeed chain", Conveyor("M160", 160), 116, new(0.36, 0.2, Auto, Moderate)),
        new("Flaker 1 infeed drive", Roller("24B-1"), 78, new(0.5, 0.45, Auto, Moderate)),
        new("Flaker 2 infeed drive", Roller("24B-1"), 78, new(0.5, 0.45, Auto, Moderate)),
        new("Flaker carriage feed 1", Leaf("LH1644"), 96, new(0.42, 0.1, Manual, Moderate)),
        new("Flaker carriage feed 2", Leaf("LH1644"), 96, new(0.42, 0.1, Manual, Moderate)),
        new("Flake collecting conveyor", Conveyor("M80", 125), 242, new(0.28, 0.4, Auto, Heavy)),
        new("Flake collecting drive", Roller("16B-2"), 88, new(0.46, 0.8, Manual, Heavy)),
        new("Wet flake bin discharge", Conveyor("M112", 200), 96, new(0.34, 0.12, Poor, Moderate)),
        new("Wet flake bin drive", Ansi("100"), 84, new(0.5, 0.35, Manual, Moderate)),
        new("Oversize return conveyor", DoublePitch("216A"), 214, new(0.26, 0.5, Manual, Heavy)),
        new("Screen drive 1", Roller("12B-2"), 104, new(0.44, 1.6, Auto, Moderate)),
        new("Screen drive 2", Roller("12B-2"), 104, new(0.44, 1.6, Auto, Moderate)),
        new("Knife transport lift", Leaf("LL1644"), 138, new(0.3, 0.2, Manual, Clean)),
        new("Chip reclaim drag chain", Welded("WH155"), 92, new(0.35, 0.15, Manual, Moderate)),
        new("Magnet conveyor drive", Roller("08B-1"), 112, new(0.36, 1.1, Manual, Moderate)),
    ]);
}
