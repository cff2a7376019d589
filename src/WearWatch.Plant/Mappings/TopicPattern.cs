namespace WearWatch.Plant.Mappings;

/// <summary>
/// Topics as a mapping names them: levels with <c>+</c> for any one, <c>#</c> at the end for any that follow, and captures such
/// as <c>{machine}</c> for one whose word is wanted.
/// </summary>
public sealed class TopicPattern
{
    private readonly string[] levels;

    private TopicPattern(string[] levels) => this.levels = levels;

    /// <summary>The filter of MQTT that finds these topics.</summary>
    public string Filter => string.Join('/', levels.Select(l => IsCapture(l) ? "+" : l));

    /// <summary>The names of the captures.</summary>
    public IReadOnlyList<string> Captures => [.. levels.Where(IsCapture).Select(NameOf)];

    /// <summary>How many levels it has.</summary>
    public int Length => levels.Length;

    /// <summary>Reads a pattern.</summary>
    /// <param name="text">The pattern.</param>
    /// <param name="fault">What is wrong with it; nothing to say when it is sound.</param>
    public static TopicPattern? Read(string text, out Phrase fault)
    {
        var pattern = new TopicPattern(text.Split('/'));
        fault = pattern.Fault();
        return fault.IsEmpty ? pattern : null;
    }

    /// <summary>The words of the captures where a topic is one of these; null where it is none.</summary>
    public IReadOnlyDictionary<string, string>? Match(string topic)
    {
        var words = topic.Split('/');
        var isOpen = levels[^1] == "#";
        if (isOpen ? words.Length < levels.Length - 1 : words.Length != levels.Length) return null;
        if (words[0].StartsWith('$') && levels[0] is "+" or "#") return null; // the broker's own (MQTT 5.0, 4.7.2)
        var captured = new Dictionary<string, string>(StringComparer.Ordinal);
        for (var i = 0; i < levels.Length - (isOpen ? 1 : 0); i++)
        {
            if (IsCapture(levels[i])) captured[NameOf(levels[i])] = words[i];
            else if (levels[i] != "+" && levels[i] != words[i]) return null;
        }

        return captured;
    }

    private Phrase Fault()
    {
        if (levels is [""]) return $"The topic is missing, such as site/{Phrase.Verbatim("{machine}")}/hours.";
        if (levels.SkipLast(1).Contains("#")) return $"In a topic # stands at the end alone.";
        if (levels.FirstOrDefault(l => l is not ("+" or "#") && !IsCapture(l) && l.AsSpan().IndexOfAny("+#{}\0") >= 0) is { } odd)
            return $"In '{odd}' a wildcard does not fill its level: write +, or a capture alone.";
        return Captures.Count != Captures.Distinct(StringComparer.Ordinal).Count()
            ? Phrase.Of($"Each capture needs a name of its own.")
            : Phrase.None;
    }

    private static bool IsCapture(string level) =>
        level is ['{', _, .., '}'] && level[1..^1].All(c => char.IsAsciiLetterOrDigit(c) || c is '_' or '-');

    private static string NameOf(string level) => level[1..^1];
}
