using WearWatch.SensorSim.Randomness;

namespace WearWatch.SensorSim.Passes;

/// <summary>A chain on a running sprocket with two sensors on its straight run, simulated by geometry alone.</summary>
/// <remarks>
/// A tooth takes one roller along on a circle; the run follows the roller's way along the run, <c>sin(theta)</c>, until the next
/// tooth takes over: so the speed swings once a tooth (polygon action). Outer links have grown by twice the wear of a joint,
/// inner ones not at all, and every joint differs a little from the others. Nothing here knows how passes are evaluated.
/// Not safe for use by several threads at once.
/// </remarks>
public sealed class PassRig
{
    private const double SteelExpansionPerKelvin = 11.5e-6;
    private const double LinkScatter = 0.0006;
    private const double WearScatterShare = 0.1;

    private readonly Chance chance;
    private readonly double[] gapsAt20Mm;
    private readonly double[] placesAt20Mm;
    private readonly double engagementMm;
    private readonly RigSetup setup;

    /// <summary>Sets a rig up.</summary>
    /// <param name="setup">Its measures.</param>
    /// <param name="elongationPercent">Elongation of the chain by wear, in percent.</param>
    /// <param name="seed">The seed of all chance.</param>
    public PassRig(RigSetup setup, double elongationPercent, int seed)
    {
        this.setup = setup;
        chance = Chance.For(seed, "pass rig");
        gapsAt20Mm = [.. Enumerable.Range(0, setup.Pitches).Select(i => Gap(i, elongationPercent))];
        placesAt20Mm = new double[setup.Pitches + 1];
        Place();
        engagementMm = chance.Between(5, 15) * setup.PitchMm;
    }

    /// <summary>The true elongation of the chain at 20 degrees, in percent of nominal.</summary>
    public double TrueElongationPercent => 100 * (placesAt20Mm[^1] / (setup.Pitches * setup.PitchMm) - 1);

    /// <summary>Lets the chain wear on by so much, in percent: outer links by twice that.</summary>
    public void Wear(double percent)
    {
        for (var i = 1; i < gapsAt20Mm.Length; i += 2) gapsAt20Mm[i] += 2 * percent / 100 * setup.PitchMm;
        Place();
    }

    /// <summary>What the sensors report of a stretch of running.</summary>
    /// <param name="seconds">How long it lasts.</param>
    /// <param name="chainC">Temperature of the chain in degrees Celsius.</param>
    /// <param name="frameC">Temperature of the frame that holds the sensors.</param>
    /// <param name="fault">What is wrong with the sensors.</param>
    public (long[] FirstUs, long[] SecondUs) Run(double seconds, double chainC, double frameC = 20, RigFault fault = default)
    {
        var stretch = 1 + SteelExpansionPerKelvin * (chainC - 20);
        var distance = (setup.DistanceMm + fault.MovedByMm) * (1 + SteelExpansionPerKelvin * (frameC - 20));
        var (shaft, from) = (new ShaftTurning(setup, chance), chance.Between(0, placesAt20Mm[^1] * stretch));
        var (first, second) = (new List<(int Roller, double At)>(), new List<(int Roller, double At)>());
        var start = ShaftAngleAt(from, stretch);
        // Far enough ahead of the first sensor that the second one sees rollers from the beginning.
        for (var (roller, at) =
            FirstRollerBehind(from - distance - 2 * setup.PitchMm, stretch); ; at += gapsAt20Mm[Wrap(roller)] * stretch, roller++)
        {
            var atFirst = TimeAt(at);
            if (atFirst > seconds) break;
            if (atFirst >= 0) first.Add((roller, Told(atFirst)));
            if (TimeAt(at + distance) is var atSecond && atSecond >= 0 && atSecond <= seconds)
                second.Add((roller, Told(atSecond)));
        }

        var seenAtFirst = fault.Seen == RollersSeen.EverySecondAtSecond ? RollersSeen.Each : fault.Seen;
        var atFirstSensor = Seen(Rollers(first, seenAtFirst), fault);
        var atSecondSensor = Seen(
            Rollers(second, fault.Seen).Select(t => t * (1 + setup.ClockPpm * 1e-6) + setup.DelayMicroseconds * 1e-6), fault);
        return fault.AreSwapped ? (atSecondSensor, atFirstSensor) : (atFirstSensor, atSecondSensor);

        // A film that is run backwards.
        double Told(double at) => fault.RunsBackwards ? seconds - at : at;

        double TimeAt(double travelMm) => shaft.TimeAt(ShaftAngleAt(travelMm, stretch) - start);
    }

    private void Place()
    {
        for (var i = 0; i < setup.Pitches; i++) placesAt20Mm[i + 1] = placesAt20Mm[i] + gapsAt20Mm[i];
    }

    private static IEnumerable<double> Rollers(List<(int Roller, double At)> passes, RollersSeen seen)
    {
        var isEach = seen is RollersSeen.Each or RollersSeen.HalfPitches;
        var times = passes.Where(p => isEach || int.IsEvenInteger(p.Roller)).Select(p => p.At);
        return seen == RollersSeen.HalfPitches
            ? times.Concat(passes.Zip(passes.Skip(1), (a, b) => (a.At + b.At) / 2))
            : times;
    }

    /// <summary>Angle of the shaft when the chain has travelled so far: whole teeth, and within a tooth by the polygon.</summary>
    private double ShaftAngleAt(double travelMm, double stretch)
    {
        var (roller, at) = FirstRollerBehind(travelMm - engagementMm, stretch);
        var half = Math.PI / setup.Teeth;
        var gap = gapsAt20Mm[Wrap(roller - 1)] * stretch;
        var share = 1 - (at - (travelMm - engagementMm)) / gap;
        return 2 * half * (roller - 1) + half + Math.Asin(Math.Clamp((2 * share - 1) * Math.Sin(half), -1, 1));
    }

    /// <summary>The first roller whose place on the unrolled chain lies behind a place, and where it is.</summary>
    private (int Roller, double AtMm) FirstRollerBehind(double placeMm, double stretch)
    {
        var length = placesAt20Mm[^1] * stretch;
        var turns = (int)Math.Floor(placeMm / length);
        var found = Array.BinarySearch(placesAt20Mm, (placeMm - turns * length) / stretch);
        var roller = found >= 0 ? found + 1 : ~found;
        return (turns * setup.Pitches + roller, turns * length + placesAt20Mm[Math.Min(roller, setup.Pitches)] * stretch);
    }

    private int Wrap(int roller) => ((roller % setup.Pitches) + setup.Pitches) % setup.Pitches;

    /// <summary>An outer link (odd) has grown by the wear of its two joints, an inner one keeps its pitch.</summary>
    private double Gap(int link, double elongationPercent) => setup.PitchMm * (1 + chance.Normal(0, LinkScatter)
        + (int.IsOddInteger(link) ? 2 * elongationPercent / 100 * (1 + chance.Normal(0, WearScatterShare)) : 0));

    private long[] Seen(IEnumerable<double> seconds, RigFault fault)
    {
        var pulses = new List<double>();
        foreach (var at in seconds.Order())
        {
            if (chance.Happens(setup.MissedShare + fault.MissedShare)) continue;
            pulses.Add(at + chance.Normal(0, setup.JitterMicroseconds * 1e-6));
            if (chance.Happens(fault.DoubledShare))
                pulses.Add(at + chance.Between(0.0005, 0.4 * setup.PitchMm / (1000 * setup.SpeedMetresPerSecond)));
        }

        return [.. pulses.Select(p => (long)Math.Round(p * 1e6)).Where(p => p >= 0).Distinct().Order()];
    }
}
