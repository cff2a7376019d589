namespace WearWatch.Chains;

/// <summary>The kinds of chain that differ in how they wear, how they are measured and what limits them.</summary>
public enum ChainFamily
{
    /// <summary>Short-pitch transmission roller chain, ISO 606 and ASME B29.1.</summary>
    Roller,

    /// <summary>Short-pitch bush chain: no rollers, the bush runs on the tooth.</summary>
    Bush,

    /// <summary>Double-pitch roller chain, ISO 1275: the joints of a short-pitch chain at twice the pitch.</summary>
    DoublePitch,

    /// <summary>Conveyor chain, ISO 1977.</summary>
    Conveyor,

    /// <summary>Leaf chain, ISO 4347: plates and pins only, runs over sheaves, usually lifts.</summary>
    Leaf,

    /// <summary>Welded-steel and offset-link chain: all links alike.</summary>
    OffsetLink,

    /// <summary>Round-steel link chain.</summary>
    RoundLink,

    /// <summary>Inverted-tooth chain.</summary>
    InvertedTooth,

    /// <summary>A chain that none of the others describes.</summary>
    Custom,
}
