namespace WearWatch.Wear;

/// <summary>How an open notice stands with those who have to do something about it.</summary>
/// <remarks>Acknowledging and putting off follow alarm management, IEC 62682 (from memory; "shelving" there).</remarks>
public enum NoticeStanding
{
    /// <summary>It asks for a person.</summary>
    Asks,

    /// <summary>A person has seen it and deals with it.</summary>
    Acknowledged,

    /// <summary>A person has put it off until a date.</summary>
    Snoozed,

    /// <summary>The swap that answers it is planned.</summary>
    Planned,
}
