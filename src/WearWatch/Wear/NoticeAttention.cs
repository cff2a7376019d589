namespace WearWatch.Wear;

/// <summary>Whether an open notice asks for a person now, and what may keep it from asking.</summary>
/// <param name="Kind">What it is about.</param>
/// <param name="Urgent">Whether to act now rather than to attend to it.</param>
/// <param name="HoldsLoad">Whether the chain lifts or holds a load.</param>
public readonly record struct NoticeAttention(NoticeKind Kind, bool Urgent, bool HoldsLoad)
{
    /// <summary>Whether a person has acknowledged it as severe as it is now.</summary>
    public bool IsAcknowledged { get; init; }

    /// <summary>Whether a person has put it off beyond now.</summary>
    public bool IsSnoozed { get; init; }

    /// <summary>Whether a swap of the chain is planned.</summary>
    public bool SwapIsPlanned { get; init; }

    /// <summary>
    /// Whether a person's word or a plan may keep it from asking. What takes a chain that lifts or holds a load out of use asks
    /// until its cause is gone.
    /// </summary>
    public bool MayBeQuiet => !(Urgent && HoldsLoad);

    /// <summary>How it stands. A planned swap answers the limit of a chain that holds no load, and nothing else.</summary>
    public NoticeStanding Standing => this switch
    {
        { MayBeQuiet: false } => NoticeStanding.Asks,
        { IsSnoozed: true } => NoticeStanding.Snoozed,
        { IsAcknowledged: true } => NoticeStanding.Acknowledged,
        { Kind: NoticeKind.LimitNear, SwapIsPlanned: true, HoldsLoad: false } => NoticeStanding.Planned,
        _ => NoticeStanding.Asks,
    };

    /// <summary>Whether it asks for action now.</summary>
    public bool Shouts => Urgent && Standing == NoticeStanding.Asks;
}
