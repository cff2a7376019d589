using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Learning;

namespace WearWatch.Dashboard.Engineer.Drivers;

/// <summary>
/// A column of the fleet model in words: what it is, for which step its effect is told, and which chains tell of it.
/// </summary>
/// <param name="Name">What it is.</param>
/// <param name="Step">For which step the factor is.</param>
/// <param name="Scale">That step in the column's own unit.</param>
/// <param name="Tells">Whether a chain's card bears on it.</param>
public sealed record DriverInput(Phrase Name, Phrase Step, double Scale, Func<ChainCard, bool> Tells)
{
    private static readonly double Double = Math.Log(2);

    /// <summary>What an effect is of.</summary>
    public static DriverInput Of(LearnedEffect effect) => effect.Origin switch
    {
        "lot" => new($"lot {effect.Member}", $"against the average lot", 1, c => c.Lot == effect.Member),
        "line" => new($"line {effect.Member}", $"against the average line", 1, c => c.Line == effect.Member),
        _ => Of(effect.Name),
    };

    /// <summary>Reads the name that the fleet model gives its column.</summary>
    private static DriverInput Of(string column)
    {
        if (column.StartsWith("ln(", StringComparison.Ordinal)) return Number(column[3..].Split(" /")[0]);
        if (column.EndsWith(" not told", StringComparison.Ordinal))
            return new($"{Called(column[..^" not told".Length])} not recorded", $"against chains with it recorded", 1, _ => true);
        var words = column.Split(' ', 2);
        return words[0] switch
        {
            "lubrication" when Enum.TryParse<LubricationState>(words[1], out var s) =>
                new($"lubrication {DutyWords.Of(s)}", $"against by hand when due", 1, c => c.Duty.Lubrication == s),
            "dust" when Enum.TryParse<DustLevel>(words[1], out var d) =>
                new($"dust {DutyWords.Of(d)}", $"against clean", 1, c => c.Duty.Dust == d),
            "family" when ChainFamily.Find(words[1]) is { } f =>
                new($"kind of chain: {f.Words}", $"against {ChainFamily.Usual.Words} chain", 1, c => c.Family == f),
            "temperature" => new($"temperature of the surroundings", $"10 °C warmer", 1, c => c.Duty.AmbientC is not null),
            _ => new(Phrase.Verbatim(column), $"for one unit", 1, _ => true),
        };
    }

    /// <summary>What the fleet model calls a quantity, in the words of screens.</summary>
    public static Phrase NameOf(string quantity) => Number(quantity).Name;

    /// <summary>What an input of the fleet model is called.</summary>
    public static Phrase Called(string input) => input switch
    {
        "relative load" => $"relative load",
        "speed" => $"speed",
        "lubrication" => $"lubrication",
        "dust" => $"dust",
        "pitch" => $"pitch",
        "teeth" => $"teeth of the largest sprocket",
        "length" => $"length in pitches",
        "hours since oiling" => $"hours since lubrication, on average",
        "temperature" => $"temperature of the surroundings",
        "family" => $"kind of chain",
        _ => Phrase.Verbatim(input),
    };

    private static DriverInput Number(string quantity) => quantity switch
    {
        "load" => new($"relative load", $"twice the load", Double, c => c.Duty.RelativeLoad is > 0),
        "speed" => new($"speed", $"twice the speed", Double, c => c.Duty.SpeedMetresPerSecond is > 0),
        "pitch" => new($"pitch", $"twice the pitch", Double, _ => true),
        "teeth" => new($"teeth of the largest sprocket", $"twice the teeth", Double, c => c.SprocketTeeth.Count > 0),
        "hours since oiling" =>
            new($"hours since lubrication, on average", $"twice the hours", Double, c => c.Duty.HoursSinceOiling is not null),
        "pitches" => new($"length in pitches", $"twice as long", Double, c => c.Pitches is not null),
        _ => new(Phrase.Verbatim(quantity), $"twice the {quantity}", Double, _ => true),
    };
}
