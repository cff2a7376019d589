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
    private static readonly TimeSpan SwapTakes = TimeSpan.FromHours(3);
    private static readonly TimeSpan PlaceTakes = TimeSpan.FromMinutes(10);

    /// <summary>Somebody goes to a chain and measures it at each of its places.</summary>
    private sealed record Round(SimulatedChain Chain, int ChainNumber, DateTimeOffset At, bool IsLastOfHistory, Chance Chance);

    /// <summary>The readings taken from one moment (included) to another (not included), in order.</summary>
    public IEnumerable<LiveReading> Between(DateTimeOffset from, DateTimeOffset to)
    {
        if (fate.IsNeverMeasured || from >= to) return [];
        var fromHour = span.Running.HoursAt(from);
        return lives.FittedUntil(span.Running.HoursAt(to))
            .Select((chain, index) => (Chain: chain, Number: index + 1))
            .Where(life => life.Chain.RemovedAtHour >= fromHour)
            .SelectMany(life => RoundsOf(life.Chain, life.Number).TakeWhile(round => round.At < to))
            .Where(round => LastPlaceAt(round.At) >= from)
            .SelectMany(Readings)
            .Where(reading => reading.Record.TakenAt >= from && reading.Record.TakenAt < to);
    }

    private IEnumerable<Round> RoundsOf(SimulatedChain chain, int number)
    {
        var chance = ChanceOf(number, "rounds");
        var fitted = span.Running.MomentAt(chain.FittedAtHour) + SwapTakes;
        var removed = span.Running.MomentAt(chain.RemovedAtHour) - SwapTakes;
        var begin = fitted > span.StartsAt ? fitted : span.StartsAt;
        var isMeasuredWhenNew = chance.Happens(0.4) && fate.Outlook != Outlook.JustFitted && begin == fitted;
        var firstAfterDays = isMeasuredWhenNew ? 1.2 : Math.Max(14, habit.IntervalDays * chance.Between(0.4, 1));

        using var due = Rota.Times(begin, firstAfterDays, habit.IntervalDays, chance).GetEnumerator();
        due.MoveNext();
        for (var index = 0; LastPlaceAt(due.Current) < removed; index++)
        {
            var at = due.Current;
            due.MoveNext();
            // Each round has a stream of its own, so that a stretch of time can be had without all that came before it.
            var isLastOfHistory = at < span.EndsAt && due.Current >= span.EndsAt;
            if (at > begin) yield return new Round(chain, number, at, isLastOfHistory, ChanceOf(number, "round", index));
        }
    }

    private IEnumerable<LiveReading> Readings(Round round)
    {
        var temperatureC = round.Chance.Normal(habit.TellsTemperature ? position.TemperatureC : 20, 3);
        for (var place = 0; place < habit.Places.Count; place++)
        {
            var isWrong = fate.IsLastReadingWrong && round.IsLastOfHistory && place == 0;
            var slip = isWrong ? MeasuringHabit.AnySlip(round.Chance) : habit.DrawSlip(round.Chance);
            yield return Take(round, place, temperatureC, slip, MayMisread(round) && slip == Slip.None);
        }
    }

    /// <summary>A person reads the counter, and the end of the history stays as the fates have it.</summary>
    private bool MayMisread(Round round) =>
        habit.Tool != Tool.Sensor && fate.Meter == MeterFate.RunsOn && !round.IsLastOfHistory;

    private LiveReading Take(Round round, int place, double temperatureC, Slip slip, bool mayMisread)
    {
        var (chain, at) = (round.Chain, round.At + PlaceTakes * place);
        var lineHour = span.Running.HoursAt(at);
        var (hours, share) = (chain.HoursAt(lineHour), habit.WearShares[place]);
        var elongation = share * chain.Path.ElongationAt(hours);
        var (told, written) = habit.Measure(position.Size.PitchMm, elongation, temperatureC, slip, round.Chance);

        var counter = new ReadCounter(meter.CountAt(lineHour), CounterSlip.None);
        // By a stream of its own, so that a slip changes nothing else.
        if (mayMisread) counter = ReadCounter.Of(counter.Hours, ChanceOf(round.ChainNumber, $"counter {place}", (int)lineHour));

        return new LiveReading(
            new WrittenReading
            {
                Chain = position.ChainName,
                TakenAt = at,
                CounterHours = counter.Hours,
                Tool = habit.Tool,
                Place = habit.Places[place],
                Pitches = habit.Pitches,
                Length = told.Text,
                Unit = told.Unit,
                TemperatureC = habit.TellsTemperature ? (int)Math.Round(temperatureC) : null,
            },
            new ReadingTruth
            {
                ChainNumber = round.ChainNumber,
                RunningHours = hours,
                ElongationPercent = elongation,
                RatePercentPer1000Hours = share * chain.Path.RateAt(hours),
                LimitPercent = chain.LimitPercent,
                HoursToLimit = chain.HoursLeftAt(lineHour),
                Slip = written,
                CounterSlip = counter.Slip,
            });
    }

    private DateTimeOffset LastPlaceAt(DateTimeOffset round) => round + PlaceTakes * (habit.Places.Count - 1);

    private Chance ChanceOf(int number, string what, int index = 0) =>
        Chance.For(seed, position.ChainName, what, string.Create(CultureInfo.InvariantCulture, $"{number}/{index}"));
}
