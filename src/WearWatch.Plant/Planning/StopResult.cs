using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Planning;

/// <summary>A stop that has begun: the plan against what was done.</summary>
/// <param name="Line">The line that stood.</param>
/// <param name="Start">When it began.</param>
/// <param name="Swaps">The swaps that were planned in it.</param>
public sealed record StopResult(string Line, DateTimeOffset Start, IReadOnlyList<(string Chain, SwapRow Swap)> Swaps)
{
    /// <summary>How many were done.</summary>
    public int Done => Swaps.Count(s => s.Swap.Outcome == SwapEnd.Done);

    /// <summary>Those that were not done, with why.</summary>
    public IEnumerable<(string Chain, string Why)> NotDone =>
        Swaps.Where(s => s.Swap.Outcome == SwapEnd.NotDone).Select(s => (s.Chain, s.Swap.OutcomeNote));

    /// <summary>How many nobody has reported yet.</summary>
    public int Open => Swaps.Count(s => s.Swap.Outcome == SwapEnd.Planned);

    /// <summary>Hours by the plan of those swaps of which both are known.</summary>
    public double PlannedHours => Both.Sum(s => s.PlannedHours!.Value);

    /// <summary>Hours that they took; null when of none both are known.</summary>
    public double? WorkedHours => Both.Any() ? Both.Sum(s => s.HoursWorked!.Value) : null;

    private IEnumerable<SwapRow> Both => Swaps.Select(s => s.Swap)
        .Where(s => s is { Outcome: SwapEnd.Done, PlannedHours: not null, HoursWorked: not null });
}
