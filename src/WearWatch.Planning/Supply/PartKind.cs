namespace WearWatch.Planning.Supply;

/// <summary>What a swap takes from the shelf.</summary>
public enum PartKind
{
    /// <summary>Chain, counted in pitches.</summary>
    Chain,

    /// <summary>Links that close the chain, counted in pieces.</summary>
    ConnectingLink,

    /// <summary>Cranked links that make an odd number of pitches, counted in pieces.</summary>
    OffsetLink,

    /// <summary>Sprockets, counted in pieces.</summary>
    Sprocket,
}
