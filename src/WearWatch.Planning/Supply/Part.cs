namespace WearWatch.Planning.Supply;

/// <summary>A part as the store keeps it.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Designation">The chain type it belongs to, with the teeth for a sprocket: <c>16B-1</c>, <c>16B-1 z17</c>.</param>
public readonly record struct Part(PartKind Kind, string Designation)
{
    /// <summary>A sprocket of so many teeth for a chain type.</summary>
    public static Part SprocketFor(string chainType, int teeth) =>
        new(PartKind.Sprocket, FormattableString.Invariant($"{chainType} z{teeth}"));

    /// <summary>The part in words.</summary>
    public Phrase Words => Kind switch
    {
        PartKind.Chain => $"chain {Designation}",
        PartKind.ConnectingLink => $"connecting link {Designation}",
        PartKind.OffsetLink => $"offset link {Designation}",
        _ => $"sprocket {Designation}",
    };

    /// <summary>What its quantity counts.</summary>
    public Phrase Unit => Kind == PartKind.Chain ? Phrase.Of($"pitches") : Phrase.Of($"pieces");

    /// <summary>So much of it: <c>118 pitches of chain 16B-1</c>, <c>1 connecting link 16B-1</c>.</summary>
    public Phrase Quantity(int quantity) =>
        Kind == PartKind.Chain ? Phrase.Of($"{quantity:#,0} {Unit} of {Words}") : Phrase.Of($"{quantity:#,0} {Words}");

    /// <summary>The part as files and programs know it, such as <c>16B-1 chain</c>.</summary>
    public override string ToString() => Kind switch
    {
        PartKind.Chain => $"{Designation} chain",
        PartKind.ConnectingLink => $"{Designation} connecting link",
        PartKind.OffsetLink => $"{Designation} offset link",
        _ => $"{Designation} sprocket",
    };
}
