namespace WearWatch.Dashboard.Engineer.Drivers;

/// <summary>How a chain wears against what such a chain is expected to.</summary>
public sealed record AgainstExpectation
{
    /// <summary>The chain.</summary>
    public required string Name { get; init; }

    /// <summary>Its line.</summary>
    public required string Line { get; init; }

    /// <summary>Its wear rate in percent per 1,000 h.</summary>
    public required double Rate { get; init; }

    /// <summary>The rate that the fleet model expects of its card.</summary>
    public required double Expected { get; init; }

    /// <summary>Lower end of the 90 % interval of rate over expected.</summary>
    public required double Low { get; init; }

    /// <summary>Upper end of it.</summary>
    public required double High { get; init; }

    /// <summary>Readings behind it.</summary>
    public required int Readings { get; init; }

    /// <summary>What may explain it, as far as the records tell.</summary>
    public required IReadOnlyList<Phrase> Hints { get; init; }

    public double Ratio => Rate / Expected;
}
