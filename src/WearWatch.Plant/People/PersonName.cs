namespace WearWatch.Plant.People;

/// <summary>What can be the name of a person or of a key: what stands beside entries for years.</summary>
public static class PersonName
{
    /// <summary>What stands for a person who gave no name.</summary>
    public const string Nobody = "dashboard";

    private const int Longest = 80;

    /// <summary>What is wrong with a name; null when it will do.</summary>
    public static Phrase? Fault(string name) => name switch
    {
        "" => Phrase.Of($"Give a name."),
        { Length: > Longest } => $"A name has at most {Longest} characters.",
        _ when name.Any(c => !char.IsLetterOrDigit(c) && !" .'-_".Contains(c)) =>
            $"A name has letters, digits, spaces and . ' - _ only.",
        _ when name.Equals(Nobody, StringComparison.OrdinalIgnoreCase) => $"That name stands for entries without a name.",
        _ => null,
    };
}
