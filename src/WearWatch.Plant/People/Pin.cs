namespace WearWatch.Plant.People;

/// <summary>What can be a PIN, and how often a wrong one may be tried.</summary>
public static class Pin
{
    /// <summary>
    /// The fewest digits; with four and five tries a lock, a guesser needs weeks at the tablet itself (see
    /// <see cref="MissesForEver"/>).
    /// </summary>
    public const int Shortest = 4;

    /// <summary>The most digits.</summary>
    public const int Longest = 8;

    /// <summary>Wrong PINs in a row until the sign-in is locked for a while.</summary>
    public const int MissesForAWhile = 5;

    /// <summary>Wrong PINs in a row until the PIN is taken away; NIST SP 800-63B allows 100 at most.</summary>
    public const int MissesForEver = 50;

    /// <summary>How long a sign-in is locked; as long as after wrong passwords.</summary>
    public static TimeSpan Locked { get; } = TimeSpan.FromMinutes(5);

    /// <summary>What is wrong with a PIN that somebody chose; null when it will do.</summary>
    public static Phrase? Fault(string pin) => pin switch
    {
        { Length: < Shortest or > Longest } => Phrase.Of($"A PIN has {Shortest} to {Longest} digits."),
        _ when !pin.All(char.IsAsciiDigit) => $"A PIN has digits only.",
        _ when IsEven(pin) => $"Choose digits that neither repeat nor count up or down: those are guessed first.",
        _ => null,
    };

    // 1111, 1234, 8642: from one digit to the next it is always the same step.
    private static bool IsEven(string pin) => pin.Zip(pin.Skip(1), (a, b) => b - a).Distinct().Count() == 1;
}
