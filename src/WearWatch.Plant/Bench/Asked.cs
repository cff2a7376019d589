using System.Globalization;
using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Plant.Files;
using WearWatch.Plant.Settings;
using WearWatch.Units;

namespace WearWatch.Plant.Bench;

/// <summary>
/// What a person asks, as texts by name: from a page's address, a request or a command line, read in one way for all three.
/// </summary>
/// <remarks>What cannot be read is noted in <see cref="Wrong"/> under its name, and reads as not told.</remarks>
public sealed class Asked(Func<string, string?> textOf)
{
    private readonly List<Refusal> wrong = [];

    /// <summary>What could not be read, in the order of asking.</summary>
    public IReadOnlyList<Refusal> Wrong => wrong;

    /// <summary>The text of that name without blanks around it; empty when not told.</summary>
    public string Text(string name) => textOf(name)?.Trim() ?? "";

    /// <summary>Whether anything stands under that name.</summary>
    public bool Told(string name) => Text(name).Length > 0;

    /// <summary>A tick: any text but <c>no</c>, <c>false</c> and <c>0</c>.</summary>
    public bool Tick(string name) =>
        Text(name) is { Length: > 0 } text && text.ToLowerInvariant() is not ("no" or "false" or "0");

    /// <summary>A number with decimal point or comma between two bounds; null when not told or refused.</summary>
    public double? Number(string name, double least = double.NegativeInfinity, double most = double.PositiveInfinity)
    {
        if (!Told(name)) return null;
        if (!double.TryParse(Text(name).Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out var value)
            || !double.IsFinite(value))
            return Refuse<double>(name, $"'{Text(name)}' is not a number.");
        return value >= least && value <= most ? value : Refuse<double>(name, Bounds(least, most));
    }

    /// <summary>A whole number between two bounds; null when not told or refused.</summary>
    public int? Whole(string name, int least, int most)
    {
        if (!Told(name)) return null;
        if (!int.TryParse(Text(name), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var value))
            return Refuse<int>(name, $"'{Text(name)}' is not a whole number.");
        return value >= least && value <= most ? value : Refuse<int>(name, Bounds(least, most));
    }

    /// <summary>Whole numbers with commas or blanks between, such as <c>17,75</c>.</summary>
    public IReadOnlyList<int> Teeth(string name)
    {
        var teeth = new List<int>();
        foreach (var part in Text(name).Split([',', ' ', ';'], StringSplitOptions.RemoveEmptyEntries))
        {
            if (int.TryParse(part, NumberStyles.None, CultureInfo.InvariantCulture, out var z) && z is >= 5 and <= 1000)
                teeth.Add(z);
            else Refuse(name, $"'{part}': a sprocket has 5 to 1,000 teeth; write numbers with commas between, such as 17,75.");
        }

        return teeth;
    }

    /// <summary>A word of the file formats, such as <c>double_pitch</c>; case and the mark between words do not matter.</summary>
    public T? Word<T>(string name)
        where T : struct, Enum
    {
        if (!Told(name)) return null;
        var text = Plain(Text(name));
        foreach (var value in Enum.GetValues<T>())
            if (text == Plain(value.ToString())) return value;
        return Refuse<T>(name, $"'{Text(name)}' is none of {string.Join(", ", Enum.GetValues<T>().Select(FileWords.Of))}.");
    }

    /// <summary>A kind of chain by its name in files; case and the mark between words do not matter.</summary>
    public ChainFamily? Family(string name)
    {
        if (!Told(name)) return null;
        if (ChainFamily.Find(Text(name)) is { } family) return family;
        Refuse(name, $"'{Text(name)}' is none of {string.Join(", ", ChainFamily.All)}.");
        return null;
    }

    /// <summary>A length; a plain number is in the unit given.</summary>
    public Length? Length(string name, LengthUnit unit) => Told(name) ? LengthOf(name, Text(name), unit) : null;

    /// <summary>Several lengths with semicolons between.</summary>
    public IReadOnlyList<Length> Lengths(string name, LengthUnit unit) =>
        [.. Text(name).Split([';', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .Select(text => LengthOf(name, text, unit)).OfType<Length>()];

    /// <summary>A number with a unit of a kind; a plain number is in its first unit.</summary>
    public double? Quantity(string name, QuantityKind kind)
    {
        if (!Told(name)) return null;
        return kind.Read(Text(name))
            ?? Refuse<double>(name, $"'{Text(name)}' is no {kind.Name}. Write a number with {kind.UnitList}.");
    }

    /// <summary>The unit of plain lengths; millimetres when not told.</summary>
    public LengthUnit Unit(string name)
    {
        if (!Told(name)) return LengthUnit.Millimetre;
        if (FileWords.Units.TryGetValue(Text(name).ToLowerInvariant(), out var unit)) return unit;
        Refuse(name, $"mm or in.");
        return LengthUnit.Millimetre;
    }

    /// <summary>A type of the catalogue whose pitch is known.</summary>
    public ChainType? Type(string name)
    {
        if (!Told(name)) return null;
        if (ChainCatalogue.Find(Text(name)) is not { } type)
            Refuse(name, $"No chain type is called '{Text(name)}'. Search the chain types, or give the pitch instead.");
        else if (type.PitchMm is null)
            Refuse(name, $"{type.Designation} is made in pitches of {string.Join(", ", type.PitchChoicesMm)} mm: write "
                + $"{type.Designation}x{type.PitchChoicesMm[0]}, say.");
        else
            return type;
        return null;
    }

    /// <summary>Notes what is wrong, once.</summary>
    public void Refuse(string name, Phrase reason)
    {
        var refusal = new Refusal(name, reason);
        if (!wrong.Contains(refusal)) wrong.Add(refusal);
    }

    private Length? LengthOf(string name, string text, LengthUnit unit)
    {
        if (LengthText.Read(text, unit) is LengthText.Understood understood) return understood.Length;
        return Refuse<Length>(name, $"{((LengthText.NotUnderstood)LengthText.Read(text, unit)).Reason}");
    }

    private T? Refuse<T>(string name, Phrase reason)
        where T : struct
    {
        Refuse(name, reason);
        return null;
    }

    private static Phrase Bounds(double least, double most) => (double.IsFinite(least), double.IsFinite(most)) switch
    {
        (true, true) => $"It lies between {least:#,0.###} and {most:#,0.###}.",
        (true, false) => $"It is at least {least:#,0.###}.",
        _ => $"It is at most {most:#,0.###}.",
    };

    private static string Plain(string word) => string.Concat(word.Where(char.IsLetterOrDigit)).ToUpperInvariant();
}
