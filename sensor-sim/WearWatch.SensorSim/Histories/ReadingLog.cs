using System.Globalization;
using WearWatch.SensorSim.Measuring;
using WearWatch.SensorSim.Plant;
using WearWatch.SensorSim.Randomness;
using WearWatch.SensorSim.Running;

namespace WearWatch.SensorSim.Histories;

/// <summary>The measurements at one position, from the beginning of the records as far into the future as anybody asks.</summary>
internal sealed class ReadingLog(
    int seed, MillPosition position, PositionFate fate, MeasuringHabit habit, ChainLives lives, HourMeter meter, HistorySpan span)
{
    private const double SlipProbability = 0.015;
    private const double SteelExpansionPerKelvin = 11.5e-6; // from memory; the gauge of WearWatch uses the same
    private static readonly TimeSpan SwapTakes = TimeSpan.FromHours(3);
    private static readonly TimeSpan PlaceTakes = TimeSpan.FromMinutes(10);

    /// <summary>The readings taken from one moment (included) to another (not included), in order.</summary>
    public IEnumerable<LiveReading> Between(DateTimeOffset from, DateTimeOffset to)
    {
        if (fate.IsNeverMeasured || from >= to) yield break;
        var number = 0;
        foreach (var chain in lives.FittedUntil(span.Running.HoursAt(to)).ToList())
        {
            number++;
            if (chain.RemovedAtHour < span.Running.HoursAt(from)) continue;
            foreach (var reading in ReadingsOf(chain, number, from, to)) yield return reading;
        }
    }

    private IEnumerable<LiveReading> ReadingsOf(SimulatedChain chain, int number, DateTimeOffset from, DateTimeOffset to)
    {
        var chance = ChanceOf(number, "rounds");
        var fitted = span.Running.MomentAt(chain.FittedAtHour) + SwapTakes;
        var removed = span.Running.MomentAt(chain.RemovedAtHour) - SwapTakes;
        var begin = fitted > span.StartsAt ? fitted : span.StartsAt;
        var isMeasuredWhenNew = chance.Happens(0.4) && fate.Outlook != Outlook.JustFitted && begin == fitted;
        var firstAfterDays = isMeasuredWhenNew ? 1.2 : Math.Max(14, habit.IntervalDays * chance.Between(0.4, 1));

        foreach (var (index, round) in Rota.Times(begin, firstAfterDays, habit.IntervalDays, chance).Index())
        {
            var lastPlace = round + PlaceTakes * (habit.Places.Count - 1);
            if (round >= to || lastPlace >= removed) yield break;
            if (round <= begin || lastPlace < from) continue;
            foreach (var reading in Round(chain, number, round, ChanceOf(number, "round", index)))
            {
                if (reading.Record.TakenAt >= from && reading.Record.TakenAt < to) yield return reading;
            }
        }
    }

    private IEnumerable<LiveReading> Round(SimulatedChain chain, int number, DateTimeOffset round, Chance chance)
    {
        var temperature = chance.Normal(habit.TellsTemperature ? position.TemperatureC : 20, 3);
        for (var place = 0; place < habit.Places.Count; place++)
            yield return Take(chain, number, place, round + PlaceTakes * place, temperature, chance);
    }

    private LiveReading Take(
        SimulatedChain chain, int number, int place, DateTimeOffset at, double temperatureC, Chance chance)
    {
        var lineHour = span.Running.HoursAt(at);
        var hours = chain.HoursAt(lineHour);
        var share = habit.WearShares[place];
        var elongation = share * chain.Path.ElongationAt(hours);
        var slip = habit.Tool != Tool.Sensor && chance.Happens(SlipProbability) ? DrawSlip(chance) : Slip.None;

        // Wear is not quite the same over every stretch that a tape is laid along.
        var atThisStretch = elongation + chance.Normal(0, 0.01 * elongation);
        var laidOver = habit.Pitches + slip switch { Slip.OnePitchTooMany => 1, Slip.OnePitchTooFew => -1, _ => 0 };
        var length = laidOver * position.Size.PitchMm * (1 + atThisStretch / 100)
            * (1 + SteelExpansionPerKelvin * (temperatureC - 20)) + chance.Normal(0, habit.ScatterMm);
        var (told, written) = Write(ToldLength.Of(length, habit.Tool, habit.InInches), slip);

        return new LiveReading(
            new ReadingRecord(
                position.ChainName, at, meter.CountAt(lineHour), habit.Tool, habit.Places[place], habit.Pitches, told.Text, told.Unit,
                habit.TellsTemperature ? (int)Math.Round(temperatureC) : null),
            new ReadingTruth(
                number, hours, elongation, share * chain.Path.RateAt(hours), chain.LimitPercent, chain.HoursLeftAt(lineHour), written));
    }

    private static Slip DrawSlip(Chance chance) =>
        chance.OneOf([Slip.OnePitchTooMany, Slip.OnePitchTooFew, Slip.DecimalSlip, Slip.SwappedDigits]);

    /// <summary>A slip of the pen changes the text; a length without a point or with equal digits offers no room for some.</summary>
    private static (ToldLength Told, Slip Slip) Write(ToldLength told, Slip slip)
    {
        if (slip == Slip.DecimalSlip && told.WithSlippedPoint() is var slipped && slipped != told) return (slipped, slip);
        if (slip is not (Slip.DecimalSlip or Slip.SwappedDigits)) return (told, slip);
        var swapped = told.WithSwappedDigits();
        return (swapped, swapped == told ? Slip.None : Slip.SwappedDigits);
    }

    /// <summary>Each round has a stream of its own, so that a stretch of time can be had without all that came before it.</summary>
    private Chance ChanceOf(int number, string what, int index = 0) => Chance.For(
        seed, position.ChainName, number.ToString(CultureInfo.InvariantCulture), what, index.ToString(CultureInfo.InvariantCulture));
}
