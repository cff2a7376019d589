namespace WearWatch.Storage.Rows;

/// <summary>When notices go to a person by mail.</summary>
public enum MailRhythm
{
    Never = 0,

    /// <summary>Each soon after it was raised.</summary>
    AtOnce = 1,

    /// <summary>All together once a day.</summary>
    Daily = 2,

    /// <summary>The urgent ones soon after they were raised, all together once a day.</summary>
    UrgentAtOnce = 3,
}
