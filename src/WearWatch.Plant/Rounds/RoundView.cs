using WearWatch.Plant.Settings;
using WearWatch.Rounds;
using WearWatch.Running;

namespace WearWatch.Plant.Rounds;

/// <summary>A task of a stop, and whether it has been done today.</summary>
/// <param name="Task">The task.</param>
/// <param name="Done">Whether it has been done.</param>
public sealed record StopTask(RoundTask Task, bool Done);

/// <summary>A stop of a round: a chain and what is due there today.</summary>
/// <param name="Chain">The chain.</param>
/// <param name="Tasks">What is due there, or was and is done.</param>
public sealed record RoundStop(FloorChain Chain, IReadOnlyList<StopTask> Tasks);

/// <summary>The round of a line: its stops in walking order, and who has it.</summary>
/// <param name="Line">The line; empty for chains that are on none.</param>
/// <param name="Stops">Where something is due.</param>
/// <param name="Person">Who took it; null while nobody has.</param>
public sealed record LineRound(string Line, IReadOnlyList<RoundStop> Stops, string? Person)
{
    /// <summary>The line as screens call it.</summary>
    public Phrase Name => Line.Length > 0 ? Phrase.Verbatim(Line) : Phrase.Of($"Without a line");

    /// <summary>How many tasks there are.</summary>
    public int All => Stops.Sum(s => s.Tasks.Count);

    /// <summary>How many of them have been done.</summary>
    public int Done => Stops.Sum(s => s.Tasks.Count(t => t.Done));
}

/// <summary>What is to be walked today.</summary>
/// <param name="Rounds">The rounds, a line each.</param>
/// <param name="Time">The moment for which they hold.</param>
public sealed record RoundView(IReadOnlyList<LineRound> Rounds, PlantTime Time)
{
    /// <summary>Picks what is due by the end of the day, or was and is done.</summary>
    /// <param name="chains">All chains, in walking order.</param>
    /// <param name="calendar">When the plant runs.</param>
    /// <param name="time">Now.</param>
    /// <param name="persons">Who has which line today.</param>
    public static RoundView Of(
        IEnumerable<FloorChain> chains, ProductionCalendar calendar, PlantTime time, IReadOnlyDictionary<string, string> persons)
    {
        var (today, tomorrow) = (time.StartOf(time.Today), time.StartOf(time.Today.AddDays(1)));
        var stops = chains.Select(chain => new RoundStop(chain, [.. chain.Tasks(calendar, time.Now)
            .Select(task => new StopTask(task, chain.IsDoneSince(task.Kind, today)))
            .Where(stop => stop.Done || stop.Task.IsDueBefore(tomorrow))])).Where(stop => stop.Tasks.Count > 0);
        return new RoundView(
            [.. stops.GroupBy(s => s.Chain.Row.Line)
                .Select(there => new LineRound(there.Key, [.. there], persons.GetValueOrDefault(there.Key)))], time);
    }
}
