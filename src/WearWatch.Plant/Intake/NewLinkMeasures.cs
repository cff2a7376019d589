using WearWatch.Gauging;
using WearWatch.Storage.Rows;
using WearWatch.Units;

namespace WearWatch.Plant.Intake;

/// <summary>
/// Measures of a round-link chain's links on their way in, as they were typed; the numbers are not checked yet.
/// </summary>
public sealed record NewLinkMeasures
{
    /// <summary>Given by whoever sends them: the same key sent twice is stored once.</summary>
    public required string Key { get; init; }

    /// <summary>Who made the key.</summary>
    public KeyOwner KeyOwner { get; init; }

    /// <summary>The chain's name.</summary>
    public required string Chain { get; init; }

    /// <summary>When they were taken; this or the counter is needed.</summary>
    public DateTimeOffset? TakenAt { get; init; }

    /// <summary>The hour counter then.</summary>
    public double? CounterH { get; init; }

    /// <summary>Which link, where; needed, so that the next one measures there again.</summary>
    public required string Place { get; init; }

    /// <summary>With what the length over several links was measured.</summary>
    public Tool Tool { get; init; } = Tool.Caliper;

    /// <summary>Inner length of one link as it was typed, or empty.</summary>
    public string OneLink { get; init; } = "";

    /// <summary>Length over several links as it was typed, or empty.</summary>
    public string SeveralLinks { get; init; } = "";

    /// <summary>Over how many; null for as many as the chain's table says.</summary>
    public int? Links { get; init; }

    /// <summary>Diameter in the crown in the direction of pull as it was typed, or empty.</summary>
    public string D1 { get; init; } = "";

    /// <summary>Diameter in the crown at right angles to it as it was typed, or empty.</summary>
    public string D2 { get; init; } = "";

    /// <summary>The unit of plain numbers.</summary>
    public LengthUnit Unit { get; init; } = LengthUnit.Millimetre;

    /// <summary>Who or what told them.</summary>
    public required string ToldBy { get; init; }

    /// <summary>All as it was typed, with its unit, for people to read.</summary>
    internal string Written => string.Join("; ",
        new[] { ("L1", OneLink), ("L", SeveralLinks), ("d1", D1), ("d2", D2) }.Where(part => part.Item2.Trim().Length > 0)
            .Select(part => $"{part.Item1} {LengthText.WithUnit(part.Item2.Trim(), Unit)}"));
}
