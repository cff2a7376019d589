using WearWatch.SensorSim.Histories;
using WearWatch.SensorSim.Plant;
using WearWatch.SensorSim.Plant.Lines;
using WearWatch.SensorSim.Randomness;
using WearWatch.SensorSim.Running;

namespace WearWatch.SensorSim;

/// <summary>A fictional board and pellet mill with five lines and eighty chains, whose true wear is known.</summary>
/// <remarks>
/// All of it is invented; no such mill, no such people. The same seed, end and years give the same mill for ever. A mill is
/// not safe for use by several threads at once.
/// </remarks>
public sealed class Mill
{
    private const int YearsBeforeRecords = 12;

    /// <summary>Builds the mill as it is at the end of its history.</summary>
    /// <param name="endsAt">The moment at which the history ends.</param>
    /// <param name="seed">The seed; another seed gives other chains in the same mill.</param>
    /// <param name="years">How many years the records reach back, 1 to 10.</param>
    public Mill(DateTimeOffset endsAt, int seed, int years = 3)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(years, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(years, 10);
        EndsAt = MillClock.At(endsAt);
        StartsAt = MillClock.At(EndsAt.AddYears(-years));

        var fates = Fates.Deal(seed, [.. Lines.SelectMany(l => l.Positions)]);
        Histories = [.. Lines.SelectMany(line => HistoriesOf(line, seed, fates))];
    }

    /// <summary>The moment at which the history ends.</summary>
    public DateTimeOffset EndsAt { get; }

    /// <summary>The moment at which the records begin.</summary>
    public DateTimeOffset StartsAt { get; }

    /// <summary>Every position with all that happened there, in the order of the lines.</summary>
    internal IReadOnlyList<PositionHistory> Histories { get; }

    /// <summary>The lines, in the order in which the wood passes them.</summary>
    internal static IReadOnlyList<ProductionLine> Lines { get; } =
        [Debarking.Line, Flaking.Line, Drying.Line, FormingAndPress.Line, Pelleting.Line];

    private IEnumerable<PositionHistory> HistoriesOf(
        ProductionLine line, int seed, IReadOnlyDictionary<string, PositionFate> fates)
    {
        var firstDay = DateOnly.FromDateTime(StartsAt.Date).AddYears(-YearsBeforeRecords);
        var running = new RunningTime(line.Shifts, Chance.For(seed, line.Name, "running"), firstDay);
        var span = new HistorySpan(StartsAt, EndsAt, running);
        return line.Positions.Select(position => new PositionHistory(seed, line, position, fates[position.ChainName], span));
    }
}
