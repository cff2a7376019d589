namespace WearWatch.Planning.Swaps;

/// <summary>What is to be said before any plan of a chain that holds a load.</summary>
public enum LoadWarningKind
{
    /// <summary>Its readings tell too little: no date can be told by which it must go.</summary>
    CannotBeJudged,

    /// <summary>The shutdown of its swap has begun, and nobody has said what became of it.</summary>
    SwapBegun,

    /// <summary>A finding or an examiner's report stops it, and no competent person has released it.</summary>
    Stopped,

    /// <summary>A person has taken it out of use: its hard date asks nothing more.</summary>
    TakenOut,
}

/// <summary>A chain that holds a load and of which a plan has something to say first, whether it plans its swap or not.</summary>
/// <param name="Chain">The chain's name.</param>
/// <param name="Line">Its line.</param>
/// <param name="Kind">What is to be said.</param>
/// <param name="OutOfUseBy">The moment after which it must not be used, or null when that is not known.</param>
/// <param name="Begun">When the shutdown of its swap began; null for none.</param>
public sealed record LoadWarning(
    string Chain, string Line, LoadWarningKind Kind, DateTimeOffset? OutOfUseBy = null, DateTimeOffset? Begun = null);
