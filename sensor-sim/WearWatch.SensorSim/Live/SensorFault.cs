using WearWatch.SensorSim.Passes;

namespace WearWatch.SensorSim.Live;

/// <summary>What a fault on command is at a pair of sensors: in the rig and in what it tells. This is the truth of it.</summary>
internal static class SensorFault
{
    private const double CreepMmPerDay = 0.1;

    /// <summary>The rig with the fault.</summary>
    public static RigSetup In(RigSetup sound, LiveFault fault) => fault switch
    {
        LiveFault.RunOut => sound with { RunOut = 0.01 },
        LiveFault.SwingingSpeed => sound with { ShaftSwing = 0.015, SwingSeconds = (0.4, 3) },
        LiveFault.FastClock => sound with { ClockPpm = 100 },
        LiveFault.LateChannel => sound with { DelayMicroseconds = 500, SpeedShare = (0.7, 1.3) },
        _ => sound,
    };

    /// <summary>What is wrong with the sensors, so many days after it began.</summary>
    public static RigFault Of(LiveFault fault, double days) => fault switch
    {
        LiveFault.MissedPulses => new RigFault(MissedShare: 0.2),
        LiveFault.MovedSensor => new RigFault(MovedByMm: 4),
        LiveFault.CreepingSensor => new RigFault(MovedByMm: CreepMmPerDay * days),
        LiveFault.SwappedSensors => new RigFault { AreSwapped = true },
        LiveFault.RunsBackwards => new RigFault(RunsBackwards: true),
        LiveFault.EverySecondRoller => new RigFault { Seen = RollersSeen.EverySecond },
        LiveFault.HalfPitches => new RigFault { Seen = RollersSeen.HalfPitches },
        _ => default,
    };
}
