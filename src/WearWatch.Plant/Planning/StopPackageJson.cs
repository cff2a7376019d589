namespace WearWatch.Plant.Planning;

/// <summary>A planned shutdown for other programs: its work package by the saved plan, whole each time.</summary>
/// <remarks>The same in webhooks and in files.</remarks>
public sealed record StopPackageJson
{
    /// <summary>The shutdown's id; the same as in the plan.</summary>
    public required string Shutdown { get; init; }

    /// <summary>The line that stands still.</summary>
    public required string Line { get; init; }

    /// <summary>When it begins.</summary>
    public required DateTimeOffset Start { get; init; }

    /// <summary>When it is over.</summary>
    public required DateTimeOffset End { get; init; }

    /// <summary>How many fitters there are.</summary>
    public required int Fitters { get; init; }

    /// <summary>How many hours the work lasts beyond the shutdown.</summary>
    public required double HoursOver { get; init; }

    /// <summary>The swaps in their order. One whose id is there no more is called off.</summary>
    public required IReadOnlyList<StopSwapJson> Swaps { get; init; }

    /// <summary>What to pick from the store.</summary>
    public required IReadOnlyList<StopPickJson> Picks { get; init; }

    /// <summary>A shutdown with its package; without swaps where there is none any more.</summary>
    public static StopPackageJson Of(PlannedStop stop, WorkPackage? package) => new()
    {
        Shutdown = stop.WindowId,
        Line = stop.Line,
        Start = stop.Start,
        End = stop.End,
        Fitters = package?.Fitters ?? 0,
        HoursOver = package?.HoursOver ?? 0,
        Swaps =
        [
            .. from step in package?.Steps ?? []
               where stop.SwapOf.ContainsKey(step.Job.Face.Row.Id)
               select StopSwapJson.Of(package!, step, stop.SwapOf[step.Job.Face.Row.Id]),
        ],
        Picks = [.. (package?.Picks ?? []).Select(StopPickJson.Of)],
    };
}
