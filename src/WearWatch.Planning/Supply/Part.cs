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
    public override string ToString() => Kind switch
    {
        PartKind.Chain => $"{Designation} chain",
        PartKind.ConnectingLink => $"{Designation} connecting link",
        PartKind.OffsetLink => $"{Designation} offset link",
        _ => $"{Designation} sprocket",
    };

    /// <summary>What its quantity counts.</summary>
    public string Unit => Kind == PartKind.Chain ? "pitches" : "pieces";
}
