using System.Globalization;
using System.Text.Json.Nodes;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Webhooks;

/// <summary>Something that webhooks tell of, as a CloudEvent (CloudEvents 1.0, 3.1).</summary>
/// <param name="Id">Made from what it reports, so that the same is the same event.</param>
/// <param name="Kind">What it is about.</param>
/// <param name="At">When it came about.</param>
/// <param name="Subject">The chain or the shutdown.</param>
/// <param name="Line">The line of it.</param>
/// <param name="Data">What there is to say.</param>
internal sealed record WebhookEvent(
    string Id, WebhookEventKind Kind, DateTimeOffset At, string Subject, string Line, JsonNode Data)
{
    /// <summary>An id. It holds the moment, as ids of rows come again after an older backup was restored.</summary>
    public static string IdOf(string what, DateTimeOffset at) =>
        string.Create(CultureInfo.InvariantCulture, $"{what}-{at.UtcDateTime:yyyyMMdd'T'HHmmssfff'Z'}");

    /// <summary>Whether an address wants it.</summary>
    public bool IsFor(WebhookAddressRow address) =>
        (address.Kinds.Count == 0 || address.Kinds.Contains(Kind)) && (address.Lines.Count == 0 || address.Lines.Contains(Line));

    /// <summary>The event in the JSON format of CloudEvents 1.0, structured mode.</summary>
    public string Body(string source) => new JsonObject
    {
        ["specversion"] = "1.0",
        ["id"] = Id,
        ["source"] = source,
        ["type"] = WebhookKindWords.TypeOf(Kind),
        ["subject"] = Subject,
        ["time"] = At.UtcDateTime,
        ["datacontenttype"] = "application/json",
        ["data"] = Data.DeepClone(),
    }.ToJsonString();

    /// <summary>What waits for an address from now on.</summary>
    public WebhookDeliveryRow To(int addressId, string body, DateTimeOffset now) => new()
    {
        AddressId = addressId,
        EventId = Id,
        Kind = Kind,
        Subject = Subject,
        Body = body,
        WrittenAt = now,
        WaitsSince = now,
    };
}
