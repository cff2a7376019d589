using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Webhooks;

/// <summary>What an administrator enters of an address for webhooks.</summary>
/// <param name="Name">How people call it.</param>
/// <param name="Url">Where events are sent.</param>
/// <param name="Kinds">Only these; none for all.</param>
/// <param name="Lines">Only about chains of these lines; none for all.</param>
/// <param name="IsPaused">Whether nothing is sent for now.</param>
public sealed record NewWebhook(
    string Name, string Url, IReadOnlyList<WebhookEventKind> Kinds, IReadOnlyList<string> Lines, bool IsPaused);
