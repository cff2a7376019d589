namespace WearWatch.Storage.Rows;

/// <summary>What the security log is about.</summary>
public enum SecurityEventKind
{
    SetUp,
    SignedIn,
    SignInFailed,
    SignInDelayed,
    SignedOut,
    SignedOutEverywhere,
    PersonAdded,
    PersonSwitchedOff,
    PersonSwitchedOn,
    RolesChanged,
    PasswordChanged,
    PasswordReset,
    PinChanged,
    PinTakenAway,
    PasskeyAdded,
    PasskeyWithdrawn,
    KeyMade,
    KeyWithdrawn,
    TabletMarked,
    TabletWithdrawn,
    Exported,
    Imported,
    BackedUp,
    BackupFailed,
    Restored,
    NotAllowed,
    CompanyConnected,
    CompanyDisconnected,
    CompanyWithdrew,
    WebhookAdded,
    WebhookChanged,
    WebhookRemoved,
    WebhookSecretRenewed,
}

/// <summary>One line of the security log. Rows are only ever added; after its stated time a line goes.</summary>
public sealed class SecurityEventRow
{
    public long Id { get; init; }

    public DateTimeOffset At { get; init; }

    public SecurityEventKind Kind { get; init; }

    /// <summary>Who did it: a person, a key, or a part of the program; empty for somebody unknown.</summary>
    public string Who { get; init; } = "";

    /// <summary>To whom or what it was done, or empty.</summary>
    public string About { get; init; } = "";

    /// <summary>From which address; empty where none is known.</summary>
    public string Address { get; init; } = "";
}
