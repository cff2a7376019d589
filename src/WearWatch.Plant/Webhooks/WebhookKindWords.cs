using System.Diagnostics;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Webhooks;

/// <summary>Events as receivers know them.</summary>
public static class WebhookKindWords
{
    /// <summary>The <c>type</c> of an event. It never changes: another meaning is another version at its end.</summary>
    /// <param name="kind">What it is about.</param>
    public static string TypeOf(WebhookEventKind kind) => kind switch
    {
        WebhookEventKind.NoticeRaised => "wearwatch.notice.raised.v1",
        WebhookEventKind.NoticeChanged => "wearwatch.notice.changed.v1",
        WebhookEventKind.NoticeEnded => "wearwatch.notice.ended.v1",
        WebhookEventKind.StopPlanned => "wearwatch.stop.planned.v1",
        WebhookEventKind.ChainReplaced => "wearwatch.chain.replaced.v1",
        WebhookEventKind.Test => "wearwatch.test.v1",
        _ => throw new UnreachableException($"Event {kind} has no type."),
    };
}
