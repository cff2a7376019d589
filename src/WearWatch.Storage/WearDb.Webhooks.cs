using Microsoft.EntityFrameworkCore;
using WearWatch.Storage.Rows;

namespace WearWatch.Storage;

/// <content>Webhooks: where they go, what is on its way, what they have said.</content>
public partial class WearDb
{
    public DbSet<WebhookAddressRow> WebhookAddresses => Set<WebhookAddressRow>();

    public DbSet<WebhookDeliveryRow> WebhookDeliveries => Set<WebhookDeliveryRow>();

    public DbSet<WebhookNoticeRow> WebhookNotices => Set<WebhookNoticeRow>();

    public DbSet<WebhookStopRow> WebhookStops => Set<WebhookStopRow>();

    public DbSet<WebhookMarkRow> WebhookMarks => Set<WebhookMarkRow>();
}
