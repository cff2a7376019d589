namespace WearWatch.Dashboard.Administration.Webhooks;

/// <summary>What there is of webhooks.</summary>
/// <param name="Addresses">The addresses, by name.</param>
/// <param name="Lines">The lines of the plant, by name; one of them is empty where chains belong to none.</param>
public sealed record WebhooksView(IReadOnlyList<WebhookLine> Addresses, IReadOnlyList<string> Lines);
