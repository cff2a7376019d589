using System.Diagnostics;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Administration.Webhooks;

/// <summary>Webhooks in words.</summary>
internal static class WebhookWords
{
    /// <summary>What an event is about.</summary>
    public static string Of(WebhookEventKind kind) => kind switch
    {
        WebhookEventKind.NoticeRaised => T["notice raised"],
        WebhookEventKind.NoticeChanged => T["notice changed"],
        WebhookEventKind.NoticeEnded => T["notice ended"],
        WebhookEventKind.StopPlanned => T["shutdown planned"],
        WebhookEventKind.ChainReplaced => T["chain replaced"],
        WebhookEventKind.Test => T["test event"],
        _ => throw new UnreachableException($"Event {kind} has no words."),
    };

    /// <summary>What is sent to an address.</summary>
    public static string Of(IReadOnlyList<WebhookEventKind> kinds) =>
        kinds.Count == 0 ? T["all events"] : string.Join(", ", kinds.Select(Of));

    /// <summary>Where an event stands.</summary>
    public static string Of(WebhookState state) => state switch
    {
        WebhookState.Waiting => T["waiting"],
        WebhookState.Delivered => T["delivered"],
        WebhookState.GivenUp => T["given up"],
        _ => throw new UnreachableException($"State {state} has no words."),
    };

    /// <summary>How it stands with an address.</summary>
    public static string Of(WebhookLine line) => line switch
    {
        { IsPaused: true, PausedFor.IsEmpty: false } => T[$"paused: {line.PausedFor}"],
        { IsPaused: true } => T["paused"],
        { Failures: > 0 } => T[Phrase.Counted(line.Failures, $"1 try has failed", $"{line.Failures} tries have failed")],
        _ => T["in use"],
    };
}
