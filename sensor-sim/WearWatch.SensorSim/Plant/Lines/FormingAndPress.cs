using static WearWatch.SensorSim.Plant.ChainSize;
using static WearWatch.SensorSim.Plant.Dust;
using static WearWatch.SensorSim.Plant.Lubrication;

namespace WearWatch.SensorSim.Plant.Lines;

/// <summary>Glued flakes become a mat and, under heat, a board: parallel chains and positions that must be kept.</summary>
internal static class FormingAndPress
{
    /// <summary>The line.</summary>
    public static ProductionLine Line { get; } = new("Forming and press", "FP", ShiftPattern.SevenDaysLessSundayUpkeep,
    [
        new("Core layer forming head", Roller("12B-1"), 122, new(0.34, 0.6, Auto, Heavy)) { OwnLimitPercent = 1.5 },
        new("Face layer forming head top", Roller("12B-1"), 122, new(0.34, 0.6, Auto, Heavy)) { OwnLimitPercent = 1.5 },
        new("Face layer forming head bottom", Roller("12B-1"), 122, new(0.34, 0.6, Auto, Heavy)) { OwnLimitPercent = 1.5 },
        new("Forming belt drive", Roller("24A-2"), 94, new(0.48, 0.45, Auto, Moderate)) { HasSensors = true },
        new("Press infeed drive left", Roller("28B-2"), 88, new(0.44, 0.4, Auto, Clean))
        {
            OwnLimitPercent = 1.5,
            TemperatureC = 44,
        },
        new("Press infeed drive right", Roller("28B-2"), 88, new(0.44, 0.4, Auto, Clean))
        {
            OwnLimitPercent = 1.5,
            TemperatureC = 44,
        },
        new("Press roller carpet left", Conveyor("M56", 63), 420, new(0.3, 0.6, Auto, Moderate))
        {
            OwnLimitPercent = 1.5,
            TemperatureC = 60,
        },
        new("Press roller carpet right", Conveyor("M56", 63), 420, new(0.3, 0.6, Auto, Moderate))
        {
            OwnLimitPercent = 1.5,
            TemperatureC = 60,
        },
        new("Edge trim conveyor", DoublePitch("212A"), 168, new(0.28, 0.55, Manual, Heavy)),
        new("Diagonal saw carriage", Ansi("60"), 146, new(0.36, 0.9, Manual, Heavy)) { OwnLimitPercent = 1.5 },
        new("Board turner lift left", Leaf("LH1634"), 74, new(0.4, 0.15, Manual, Moderate)),
        new("Board turner lift right", Leaf("LH1634"), 74, new(0.4, 0.15, Manual, Moderate)),
        new("Cooling star drive", Roller("20B-1"), 84, new(0.42, 0.25, Auto, Moderate)),
        new("Stacking lift table", Leaf("LH2044"), 88, new(0.46, 0.1, Manual, Moderate)),
        new("Stack transport chain", Conveyor("M80", 100), 196, new(0.35, 0.25, Manual, Moderate)),
        new("Stack transport drive", Roller("16A-2"), 92, new(0.5, 0.4, Manual, Moderate)),
    ]);
}
