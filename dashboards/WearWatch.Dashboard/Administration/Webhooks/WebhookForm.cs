using WearWatch.Plant.Webhooks;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Administration.Webhooks;

/// <summary>An address for webhooks, as it is typed.</summary>
public sealed class WebhookForm
{
    public string? Name { get; set; }

    public string? Url { get; set; }

    /// <summary>The kinds that were ticked, by their numbers; nothing for none.</summary>
    public int[]? Kinds { get; set; }

    /// <summary>The lines that were ticked; nothing for none.</summary>
    public string[]? Lines { get; set; }

    public bool Paused { get; set; }

    /// <summary>What is kept, as a person would type it.</summary>
    public static WebhookForm Of(WebhookAddressRow row) => new()
    {
        Name = row.Name,
        Url = row.Url,
        Kinds = [.. row.Kinds.Select(k => (int)k)],
        Lines = [.. row.Lines],
        Paused = row.IsPaused,
    };

    /// <summary>What was typed.</summary>
    public NewWebhook Read() => new(
        (Name ?? "").Trim(), (Url ?? "").Trim(),
        [.. (Kinds ?? []).Select(k => (WebhookEventKind)k).Where(WebhookDesk.Kinds.Contains)], Lines ?? [], Paused);
}
