using System.Globalization;
using WearWatch.SensorSim.Histories;
using WearWatch.SensorSim.Passes;
using WearWatch.SensorSim.Plant;

namespace WearWatch.SensorSim.Live;

/// <summary>A position with sensors on the running chain.</summary>
public sealed class LivePosition
{
    private const int Teeth = 19;
    private const double PitchesApart = 32.1;
    private static readonly TimeSpan Step = TimeSpan.FromMinutes(5);

    private readonly MillPosition position;
    private readonly Func<LiveFault, PassRig> rigOf;
    private readonly Dictionary<LiveFault, PassRig> rigs = [];
    private readonly double counterAtEnd;
    private readonly DateTimeOffset end;
    private readonly double elongationPercent;
    private double? stoodAtH;
    private double? setOffH;
    private (LiveFault Fault, DateTimeOffset At) since;

    internal LivePosition(PositionHistory history, int seed, DateTimeOffset end)
    {
        (position, this.end) = (history.Position, end);
        var chain = history.CurrentChain;
        elongationPercent = chain.Path.ElongationAt(chain.HoursAt(history.Span.EndHour));
        var pitches = position.Pitches + position.Pitches % 2;
        var setup = new RigSetup(
            position.Size.PitchMm, pitches, Teeth, PitchesApart * position.Size.PitchMm, position.Duty.SpeedMetresPerSecond);
        // By the same seed it is the same chain, whatever is wrong.
        (rigOf, DistanceMm) = (fault => new PassRig(SensorFault.In(setup, fault), elongationPercent, seed), setup.DistanceMm);
        counterAtEnd = history.Meter.CountAt(history.Span.EndHour);
    }

    /// <summary>The chain's name.</summary>
    public string Chain => position.ChainName;

    /// <summary>Distance of the sensors in millimetres.</summary>
    public double DistanceMm { get; }

    /// <summary>Teeth of the sprocket that pulls.</summary>
    public static int DriverTeeth => Teeth;

    /// <summary>What its machines publish from one moment (included) to another (not included), in order of time.</summary>
    internal IEnumerable<LiveMessage> Between(string plant, DateTimeOffset from, DateTimeOffset to, LiveFault fault)
    {
        for (var at = Next(from); at < to; at += Step)
        {
            var chainC = position.TemperatureC + 4 * Math.Sin(2 * Math.PI * at.TimeOfDay.TotalDays);
            var counter = CounterAt(at, fault);
            yield return Say("running", at, string.Create(CultureInfo.InvariantCulture, $"\"counter_h\":{counter:0.00}"));
            yield return Say("temperature", at, string.Create(CultureInfo.InvariantCulture, $"\"temperature_c\":{chainC:0.0}"));
            if (at is { Hour: 7, Minute: 0 }
                && PersonFault.Length(fault, position.Size.PitchMm, elongationPercent) is var (pitches, mm))
                yield return Say("length", at, $"\"pitches\":{pitches},\"length_mm\":{mm}");
            if (at.Minute % 15 == 0) yield return Passes(at, chainC, fault);
            if (at.Minute == 30)
                yield return Say("oiling", at, fault == LiveFault.BlockedLubricator ? "\"amount_cm3\":0" : "\"amount_cm3\":0.4");
        }

        LiveMessage Say(string word, DateTimeOffset at, string fields) => new(at, $"wearwatch/v1/{plant}/{Chain}/{word}",
            string.Create(
                CultureInfo.InvariantCulture,
                $"{{\"id\":\"{Chain}-{word}-{at.UtcDateTime:yyyyMMddHHmm}\","
                + $"\"at\":\"{at.UtcDateTime:yyyy-MM-dd'T'HH:mm:ss'Z'}\",{fields}}}"));

        LiveMessage Passes(DateTimeOffset at, double chainC, LiveFault wrong)
        {
            if (since.Fault != wrong) since = (wrong, at);
            if (!rigs.TryGetValue(wrong, out var rig)) rigs[wrong] = rig = rigOf(wrong);
            var (first, second) = rig.Run(5, chainC, 20, SensorFault.Of(wrong, (at - since.At).TotalDays));
            return Say("passes", at, string.Create(CultureInfo.InvariantCulture,
                $"\"first_us\":[{string.Join(',', first)}],"
                + $"\"second_us\":[{string.Join(',', second)}],\"temperature_c\":{chainC:0.0}"));
        }
    }

    /// <summary>What the hour counter shows; one that stopped shows what it showed then, one that was set runs on.</summary>
    private double CounterAt(DateTimeOffset at, LiveFault fault)
    {
        var running = Math.Max(0, counterAtEnd + (at - end).TotalHours);
        stoodAtH = fault == LiveFault.StoppedCounter ? stoodAtH ?? running : null;
        if (PersonFault.CounterSetTo(fault, running) is { } setTo) setOffH ??= setTo - running;
        else setOffH = null;
        return stoodAtH ?? running + (setOffH ?? 0);
    }

    private static DateTimeOffset Next(DateTimeOffset from)
    {
        var over = from.UtcTicks % Step.Ticks;
        return new DateTimeOffset(over == 0 ? from.UtcTicks : from.UtcTicks - over + Step.Ticks, TimeSpan.Zero);
    }
}
