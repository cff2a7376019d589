namespace WearWatch.Storage.Rows;

/// <summary>What a webhook is about.</summary>
public enum WebhookEventKind
{
    NoticeRaised = 0,

    /// <summary>It became urgent, or a person dealt with it.</summary>
    NoticeChanged = 1,

    NoticeEnded = 2,

    /// <summary>The swaps that the saved plan has in a shutdown are others than before.</summary>
    StopPlanned = 3,

    ChainReplaced = 4,

    /// <summary>It only shows that webhooks arrive; goes to whom it is sent, whatever that one wants.</summary>
    Test = 5,
}
