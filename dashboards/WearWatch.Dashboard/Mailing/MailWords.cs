using System.Diagnostics;
using WearWatch.Plant.Settings;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Mailing;

/// <summary>When mail comes and how it went, in words.</summary>
internal static class MailWords
{
    /// <summary>When notices come.</summary>
    public static Phrase Of(MailRhythm rhythm) => rhythm switch
    {
        MailRhythm.Never => $"no mail",
        MailRhythm.AtOnce => $"each notice at once",
        MailRhythm.Daily => $"all together once a day",
        MailRhythm.UrgentAtOnce => $"urgent at once, all once a day",
        _ => throw new UnreachableException($"Rhythm {rhythm} has no words."),
    };

    /// <summary>How a mail went.</summary>
    public static Phrase Of(MailRow mail, PlantTime time) => mail switch
    {
        { IsSent: true } => $"sent {time.Moment(mail.EndedAt!.Value)}",
        { EndedAt: not null } => $"refused by the mail server: {mail.Fault}",
        { Fault.Length: > 0 } => $"waits, the mail server does not take it: {mail.Fault}",
        _ => $"waits to be sent",
    };
}
