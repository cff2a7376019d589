namespace WearWatch.Dashboard.Api.Wire;

/// <summary>What is to be said of an entry before it is told: whether it is doubted, and what may have slipped.</summary>
internal sealed record DoubtJson(
    bool IsDoubted, double? ElongationPct, double? ExpectedPct, string Question, IReadOnlyList<SlipJson> Slips)
{
    /// <summary>What looks wrong: <c>length</c>, <c>counter_h</c> or <c>taken_at</c>.</summary>
    public string Column { get; init; } = "length";

    /// <summary>How far it would move the swap, in plain words; empty where it does not move it far.</summary>
    public string HowFar { get; init; } = "";

    /// <summary>What the counter was expected to show; null when it has none or nothing was told before.</summary>
    public double? ExpectedCounterH { get; init; }

    /// <summary>What the counter can show at most, by the days that have passed; null where no dates tell.</summary>
    public double? MostCounterH { get; init; }
}

/// <summary>A slip that would explain an entry, with its odds and what the entry would be then.</summary>
internal sealed record SlipJson
{
    public required string Kind { get; init; }

    public required double Probability { get; init; }

    public required double ElongationPct { get; init; }

    public required string Words { get; init; }

    public required int Pitches { get; init; }

    public required double LengthMm { get; init; }

    public required string Chain { get; init; }

    /// <summary>The hour counter when it is corrected so; null when none was told.</summary>
    public double? CounterH { get; init; }

    /// <summary>The time when it is corrected so; null when none was told.</summary>
    public DateTimeOffset? TakenAt { get; init; }

    /// <summary>Whether it may be chosen beforehand: nothing else is near it.</summary>
    public bool IsChosen { get; init; }

    /// <summary>What answers it: <c>take</c> the correction, <c>record</c> what happened first, or <c>read_again</c>.</summary>
    public string Answer { get; init; } = "take";
}

/// <summary>A person's word on a reading that was told: who says it and why.</summary>
internal sealed record WordJson(string? By, string? Why);
