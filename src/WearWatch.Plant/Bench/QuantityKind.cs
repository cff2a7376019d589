using System.Globalization;

namespace WearWatch.Plant.Bench;

/// <summary>A kind of quantity that people write with one of several units.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Units">Its units and what one of each is in the kind's SI unit; the first is that of a plain number.</param>
public sealed record QuantityKind(Phrase Name, IReadOnlyList<(string Mark, double Factor)> Units)
{
    /// <summary>A power, in watts.</summary>
    public static QuantityKind Power { get; } =
        new($"power", [("kW", 1000), ("hp", WearWatch.Units.Power.WattsPerHorsepower), ("W", 1), ("MW", 1e6)]);

    /// <summary>A speed, in metres a second.</summary>
    public static QuantityKind Speed { get; } = new($"speed",
        [("m/s", 1), ("ft/min", WearWatch.Units.Speed.MetresPerSecondPerFootPerMinute), ("m/min", 1.0 / 60),
            ("m/h", 1.0 / 3600)]);

    /// <summary>The units in a sentence.</summary>
    public Phrase UnitList => $"{string.Join(", ", Units.Select(u => u.Mark).SkipLast(1))} or {Units[^1].Mark}";

    /// <summary>Reads a number with or without one of the units; null when it is neither, or negative.</summary>
    public double? Read(string text)
    {
        var trimmed = text.Trim();
        // "MW" is not "mW", but nobody writes milliwatts of a chain drive: case does not matter.
        var (mark, factor) = Units.Where(u => trimmed.EndsWith(u.Mark, StringComparison.OrdinalIgnoreCase))
            .OrderByDescending(u => u.Mark.Length).Append(("", Units[0].Factor)).First();
        var number = trimmed[..^mark.Length].Trim().Replace(',', '.');
        return double.TryParse(number, NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent, CultureInfo.InvariantCulture,
            out var value) && double.IsFinite(value)
            ? value * factor
            : null;
    }

    /// <summary>Whether a text carries a unit of its own.</summary>
    public bool HasUnit(string text) => Units.Any(u => text.TrimEnd().EndsWith(u.Mark, StringComparison.OrdinalIgnoreCase));
}
