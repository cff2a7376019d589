namespace WearWatch.SensorSim.Histories;

/// <summary>What happens at a position beyond ordinary wear.</summary>
internal sealed record PositionFate
{
    /// <summary>How it stands with the chain that runs at the end of the history.</summary>
    public Outlook Outlook { get; init; }

    /// <summary>Nobody ever measures here.</summary>
    public bool IsNeverMeasured { get; init; }

    /// <summary>Whether the hour counter is exchanged, and if so whether anybody writes it down.</summary>
    public MeterFate Meter { get; init; }

    /// <summary>Nobody wrote down when the first chain was fitted.</summary>
    public bool IsFittingUnrecorded { get; init; }

    /// <summary>Nor when it was replaced.</summary>
    public bool AreReplacementsUnrecorded { get; init; }

    /// <summary>Nobody has oiled it by hand for some weeks now.</summary>
    public bool HasOilingLapsed { get; init; }

    /// <summary>The last reading of the history is a gross error.</summary>
    public bool IsLastReadingWrong { get; init; }

    /// <summary>Load is not known.</summary>
    public bool IsLoadUnknown { get; init; }
}
