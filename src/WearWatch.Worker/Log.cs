using Microsoft.Extensions.Logging;
using WearWatch.Phrases;

namespace WearWatch.Worker;

/// <summary>Everything that the worker logs, written for the person on call.</summary>
internal static partial class Log
{
    [LoggerMessage(101, LogLevel.Error, "The {Job} failed; it is tried again in {Every}")]
    public static partial void JobFailed(this ILogger logger, Exception error, string job, TimeSpan every);

    [LoggerMessage(102, LogLevel.Warning,
        "No news from other processes: {Why}. Listening again in {Pause}; all screens are then drawn anew")]
    public static partial void NotListening(this ILogger logger, string why, TimeSpan pause);

    [LoggerMessage(201, LogLevel.Information, "Review: {Chains} chains looked at, {Changed} have something new")]
    public static partial void Reviewed(this ILogger logger, int chains, int changed);

    [LoggerMessage(401, LogLevel.Information,
        "Inbox: {File} taken in ({Taken} new, {AlreadyKnown} known, {Waiting} waiting, {Refused} refused)")]
    public static partial void FileTaken(this ILogger logger, string file, int taken, int alreadyKnown, int waiting, int refused);

    [LoggerMessage(402, LogLevel.Warning, "Inbox: {File} has {Refused} refused rows; see its report beside it in {Folder}")]
    public static partial void FileRefused(this ILogger logger, string file, int refused, string folder);

    [LoggerMessage(403, LogLevel.Error, "Inbox: {File} could not be taken in and is set aside with its reason in refused")]
    public static partial void FileFailed(this ILogger logger, Exception why, string file);

    [LoggerMessage(501, LogLevel.Warning, "Telemetry: {Count} messages were set aside; see the page Data sources")]
    public static partial void MessagesSetAside(this ILogger logger, int count);

    [LoggerMessage(
        502, LogLevel.Error, "Telemetry: {Count} messages could not be stored; tried again in {Wait}. Senders wait meanwhile")]
    public static partial void BatchNotStored(this ILogger logger, Exception error, int count, TimeSpan wait);

    [LoggerMessage(503, LogLevel.Debug, "Telemetry: stored, but the sender was gone before the acknowledgement: {Why}")]
    public static partial void NotAcknowledged(this ILogger logger, string why);

    [LoggerMessage(504, LogLevel.Error,
        "Telemetry is not sent on to the store of time series: {Why}. Nothing is lost: it waits; tried again in {Wait}")]
    public static partial void NotForwarded(this ILogger logger, string why, TimeSpan wait);

    [LoggerMessage(
        505, LogLevel.Warning, "The store of time series refused {Count} messages; they are kept here. The first: {Why}")]
    public static partial void Parked(this ILogger logger, int count, string why);

    [LoggerMessage(
        511, LogLevel.Information, "MQTT: connected to {Server}:{Port}, subscribed to {Filter}; session kept: {SessionKept}")]
    public static partial void BrokerConnected(this ILogger logger, string server, int port, string filter, bool sessionKept);

    [LoggerMessage(512, LogLevel.Warning, "MQTT: no connection to {Server}:{Port}: {Why} Tried again in {Wait}")]
    public static partial void BrokerLost(this ILogger logger, string server, int port, string why, TimeSpan wait);

    [LoggerMessage(513, LogLevel.Information, "MQTT: embedded broker listens on {Address}:{Port}")]
    public static partial void BrokerListens(this ILogger logger, string address, int port);

    [LoggerMessage(521, LogLevel.Warning, "Mail is not sent: {Why} Nothing is lost: it waits and is tried again")]
    public static partial void MailNotSent(this ILogger logger, string why);

    [LoggerMessage(522, LogLevel.Warning, "Mail to {Address} was refused for good by the mail server: {Why}")]
    public static partial void MailRefused(this ILogger logger, string address, string why);

    [LoggerMessage(531, LogLevel.Warning, "Webhook to {Name} was not taken: {Why} Nothing is lost: it waits and is tried again")]
    public static partial void WebhookNotTaken(this ILogger logger, string name, Phrase why);
}
