using WearWatch.SensorSim.Measuring;
using WearWatch.SensorSim.Plant;
using WearWatch.SensorSim.Randomness;
using WearWatch.SensorSim.Running;

namespace WearWatch.SensorSim.Histories;

/// <summary>All that is true and all that is written down of one position.</summary>
internal sealed class PositionHistory
{
    /// <summary>Builds the history of a position.</summary>
    public PositionHistory(int seed, ProductionLine line, MillPosition position, PositionFate fate, HistorySpan span)
    {
        (Line, Position, Fate, Span) = (line, position, fate, span);
        Lives = new ChainLives(seed, position, fate, span);
        Meter = MeterFrom(Lives.FittedUntil(span.EndHour).First(), fate, span, Chance.For(seed, position.ChainName, "meter"));
        var chance = Chance.For(seed, position.ChainName, "habit");
        Habit = MeasuringHabit.At(position, IntervalDays(fate.Outlook, chance), chance);
        Readings = new ReadingLog(seed, position, fate, Habit, Lives, Meter, span);
        Events = new EventLog(seed, position, fate, Lives, Meter, span);
    }

    /// <summary>The line it belongs to.</summary>
    public ProductionLine Line { get; }

    /// <summary>The position.</summary>
    public MillPosition Position { get; }

    /// <summary>What happens there beyond ordinary wear.</summary>
    public PositionFate Fate { get; }

    /// <summary>The time over which records were kept.</summary>
    public HistorySpan Span { get; }

    /// <summary>The chains, one after the other.</summary>
    public ChainLives Lives { get; }

    /// <summary>The hour counter.</summary>
    public HourMeter Meter { get; }

    /// <summary>How it is measured.</summary>
    public MeasuringHabit Habit { get; }

    /// <summary>What was measured.</summary>
    public ReadingLog Readings { get; }

    /// <summary>What happened.</summary>
    public EventLog Events { get; }

    /// <summary>The oldest recorded chain.</summary>
    public SimulatedChain FirstChain => Lives.FittedUntil(Span.EndHour).First();

    /// <summary>The chain that runs at the end of the history.</summary>
    public SimulatedChain CurrentChain => Lives.RunningAt(Span.EndHour);

    private static HourMeter MeterFrom(SimulatedChain first, PositionFate fate, HistorySpan span, Chance chance)
    {
        var reset = fate.Meter == MeterFate.RunsOn
            ? null
            : new MeterReset(
                span.StartHour + chance.Between(0.25, 0.85) * (span.EndHour - span.StartHour),
                Recorded: fate.Meter == MeterFate.ExchangeRecorded);
        return new HourMeter(first.FittedAtHour, Math.Floor(chance.Between(3_000, 24_000)), chance.Happens(0.7) ? 0 : 1, reset);
    }

    /// <summary>Two to eight weeks; what is near its limit or wears fast is looked at more often.</summary>
    private static double IntervalDays(Outlook outlook, Chance chance) => outlook switch
    {
        Outlook.SwapNow or Outlook.WearsFaster => chance.Between(15, 21),
        Outlook.PlanASwap or Outlook.BadLot => chance.Between(16, 35),
        _ => chance.Between(18, 45),
    };
}
