using WearWatch.Units;

namespace WearWatch.Plant.Files;

/// <summary>A reading of a part as somebody wrote or typed it; the numbers are not checked yet.</summary>
public sealed record PartAsWritten
{
    /// <summary>The chain's name.</summary>
    public required string Chain { get; init; }

    /// <summary>When it was taken; this or the counter is needed.</summary>
    public DateTimeOffset? TakenAt { get; init; }

    /// <summary>The hour counter then.</summary>
    public double? CounterH { get; init; }

    /// <summary>Which part, by its word in files.</summary>
    public required string Part { get; init; }

    /// <summary>Which one, where; or empty.</summary>
    public string Place { get; init; } = "";

    /// <summary>The reading.</summary>
    public required string Value { get; init; }

    /// <summary>Its size when new, or empty: then as told before, or by the chain's type.</summary>
    public string New { get; init; } = "";

    /// <summary>The plant's own limit, or empty: then as told before, or the trade's.</summary>
    public string Limit { get; init; } = "";

    /// <summary>Who says so, or empty.</summary>
    public string LimitSource { get; init; } = "";

    /// <summary>The unit of plain numbers.</summary>
    public LengthUnit Unit { get; init; } = LengthUnit.Millimetre;
}
