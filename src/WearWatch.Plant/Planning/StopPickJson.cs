namespace WearWatch.Plant.Planning;

/// <summary>A part that a planned shutdown takes from the store.</summary>
public sealed record StopPickJson
{
    /// <summary>The part, such as <c>16B-1 chain</c>.</summary>
    public required string Part { get; init; }

    /// <summary>What its quantity counts: <c>pitches</c> or <c>pieces</c>.</summary>
    public required string Unit { get; init; }

    /// <summary>How much of it.</summary>
    public required int Quantity { get; init; }

    /// <summary>How much is missing by then; null where the store keeps no record of it.</summary>
    public required int? Missing { get; init; }

    /// <summary>The numbers under which it is kept.</summary>
    public required IReadOnlyList<string> Numbers { get; init; }

    /// <summary>A line of a pick list.</summary>
    public static StopPickJson Of(PickLine line) => new()
    {
        Part = line.Part.ToString(),
        Unit = line.Part.Unit.ToString(),
        Quantity = line.Quantity,
        Missing = line.Missing,
        Numbers = line.Numbers,
    };
}
