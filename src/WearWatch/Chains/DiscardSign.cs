namespace WearWatch.Chains;

/// <summary>A sign of wear or damage, other than elongation, at which a chain or its wheels are to be replaced.</summary>
/// <param name="Text">What to look for, in plain words.</param>
/// <param name="Source">Who says so.</param>
public sealed record DiscardSign(string Text, string Source)
{
    private const string Leaf = "docs/references.md [30]";
    private const string Conveyor = "docs/references.md [27]";

    /// <summary>The signs to look for on a kind of chain.</summary>
    /// <remarks>
    /// Elongation says nothing of these. Of the bush wall the source leaves open whether 40 % are worn or left.
    /// </remarks>
    public static IReadOnlyList<DiscardSign> For(ChainFamily family) => family switch
    {
        ChainFamily.Leaf =>
        [
            new("plates worn by 5 % of their height where they run over the sheave", Leaf),
            new("turned or proud pins, cracked plates, rust between plates: at any elongation", Leaf),
        ],
        ChainFamily.Conveyor or ChainFamily.OffsetLink =>
        [
            new("pins worn to 0.975 of their diameter if case-hardened, to 0.85 if through-hardened", Conveyor),
            new("plates worn by a third of their thickness or height", Conveyor),
            new("bush wall worn through to 40 % (the source leaves open whether worn or left: take the stricter)", Conveyor),
            new("tooth roots worn by 3 to 10 mm, by the size of the chain", Conveyor),
        ],
        ChainFamily.RoundLink => [new("a link worn by 10 % of its diameter", Sourced.Memory)],
        _ =>
        [
            new("plates worn by 5 % of their height: chain and wheels together", "docs/references.md [28]"),
            new("hooked or thinned teeth: no new chain on them", "docs/references.md [36]"),
            new("reddish-brown deposit at the joints: too little oil reaches them", "docs/references.md [51]"),
        ],
    };
}
