using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Administration.Trail;

/// <summary>Says what the security log is about.</summary>
internal static class SecurityWords
{
    public static string Of(SecurityEventKind kind) => kind switch
    {
        SecurityEventKind.SetUp => T["administrator set up"],
        SecurityEventKind.SignedIn => T["signed in"],
        SecurityEventKind.SignInFailed => T["sign-in refused"],
        SecurityEventKind.SignInDelayed => T["sign-in made to wait"],
        SecurityEventKind.SignedOut => T["signed out"],
        SecurityEventKind.SignedOutEverywhere => T["signed out everywhere"],
        SecurityEventKind.PersonAdded => T["person added"],
        SecurityEventKind.PersonSwitchedOff => T["person switched off"],
        SecurityEventKind.PersonSwitchedOn => T["person switched on"],
        SecurityEventKind.RolesChanged => T["roles changed"],
        SecurityEventKind.PasswordChanged => T["password changed"],
        SecurityEventKind.PasswordReset => T["password reset"],
        SecurityEventKind.PinChanged => T["PIN changed"],
        SecurityEventKind.PinTakenAway => T["PIN taken away"],
        SecurityEventKind.PasskeyAdded => T["passkey added"],
        SecurityEventKind.PasskeyWithdrawn => T["passkey withdrawn"],
        SecurityEventKind.KeyMade => T["API key made"],
        SecurityEventKind.KeyWithdrawn => T["API key withdrawn"],
        SecurityEventKind.TabletMarked => T["shared tablet added"],
        SecurityEventKind.TabletWithdrawn => T["shared tablet withdrawn"],
        SecurityEventKind.Exported => T["data exported"],
        SecurityEventKind.Imported => T["file imported"],
        SecurityEventKind.BackedUp => T["backup made"],
        SecurityEventKind.BackupFailed => T["backup failed"],
        SecurityEventKind.Restored => T["backup restored"],
        SecurityEventKind.NotAllowed => T["refused for want of a role"],
        SecurityEventKind.CompanyConnected => T["company account connected"],
        SecurityEventKind.CompanyDisconnected => T["company account disconnected"],
        SecurityEventKind.CompanyWithdrew => T["no longer in the directory"],
        SecurityEventKind.WebhookAdded => T["webhook receiver added"],
        SecurityEventKind.WebhookChanged => T["webhook receiver changed"],
        SecurityEventKind.WebhookRemoved => T["webhook receiver removed"],
        SecurityEventKind.WebhookSecretRenewed => T["webhook secret renewed"],
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
