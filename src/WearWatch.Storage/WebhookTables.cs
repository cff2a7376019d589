using Microsoft.EntityFrameworkCore;
using WearWatch.Storage.Rows;

namespace WearWatch.Storage;

/// <summary>How webhooks, their addresses and what they have said are laid out.</summary>
internal static class WebhookTables
{
    private const int LongestName = 80;
    private const int LongestUrl = 2000;
    private const int LongestSubject = 200;
    private const int LongestEventId = 80;

    public static void Describe(ModelBuilder model)
    {
        model.Entity<WebhookAddressRow>(address =>
        {
            address.Property(a => a.Name).HasMaxLength(LongestName);
            address.Property(a => a.Url).HasMaxLength(LongestUrl);
            address.Property(a => a.Kinds)
                .HasConversion(new JsonList<WebhookEventKind>(), JsonList<WebhookEventKind>.Comparer);
            address.Property(a => a.Lines).HasConversion(new JsonList<string>(), JsonList<string>.Comparer);
            address.HasIndex(a => a.Name).IsUnique();
        });
        model.Entity<WebhookDeliveryRow>(delivery =>
        {
            delivery.Property(d => d.EventId).HasMaxLength(LongestEventId);
            delivery.Property(d => d.Subject).HasMaxLength(LongestSubject);
            delivery.HasIndex(d => new { d.AddressId, d.EventId }).IsUnique();
            delivery.HasIndex(d => new { d.AddressId, d.State, d.Id });
            delivery.HasIndex(d => d.EndedAt);
            delivery.HasOne<WebhookAddressRow>().WithMany().HasForeignKey(d => d.AddressId).OnDelete(DeleteBehavior.Cascade);
        });
        model.Entity<WebhookNoticeRow>(notice =>
        {
            notice.HasKey(n => n.NoticeId);
            notice.Property(n => n.NoticeId).ValueGeneratedNever();
            notice.HasOne<NoticeRow>().WithMany().HasForeignKey(n => n.NoticeId).OnDelete(DeleteBehavior.Cascade);
        });
        model.Entity<WebhookStopRow>(stop =>
        {
            stop.HasKey(s => s.WindowId);
            stop.Property(s => s.Swaps).HasConversion(new JsonList<long>(), JsonList<long>.Comparer);
        });
        model.Entity<WebhookMarkRow>();
    }
}
