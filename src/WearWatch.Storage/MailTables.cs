using Microsoft.EntityFrameworkCore;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Storage;

/// <summary>How mails, and what people wish of them, are laid out.</summary>
internal static class MailTables
{
    private const int LongestAddress = 254; // RFC 5321, 4.5.3.1.3, less the two brackets
    private const int LongestKey = 80;

    public static void Describe(ModelBuilder model)
    {
        model.Entity<MailWishRow>(wish =>
        {
            wish.HasKey(w => w.PersonId);
            wish.Property(w => w.PersonId).ValueGeneratedNever();
            wish.Property(w => w.Address).HasMaxLength(LongestAddress);
            wish.Property(w => w.Lines).HasConversion(new JsonList<string>(), JsonList<string>.Comparer);
            wish.Property(w => w.Kinds).HasConversion(new JsonList<NoticeKind>(), JsonList<NoticeKind>.Comparer);
            wish.HasOne<PersonRow>().WithMany().HasForeignKey(w => w.PersonId).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<MailRow>(mail =>
        {
            mail.Property(m => m.Key).HasMaxLength(LongestKey);
            mail.Property(m => m.Address).HasMaxLength(LongestAddress);
            mail.HasIndex(m => m.Key).IsUnique();
            mail.HasIndex(m => new { m.EndedAt, m.NextTryAt });
            mail.HasOne<PersonRow>().WithMany().HasForeignKey(m => m.PersonId).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<MailedNoticeRow>(mailed =>
        {
            mailed.HasKey(m => new { m.PersonId, m.NoticeId, m.Urgent });
            mailed.HasOne<PersonRow>().WithMany().HasForeignKey(m => m.PersonId).OnDelete(DeleteBehavior.Restrict);
            mailed.HasOne<NoticeRow>().WithMany().HasForeignKey(m => m.NoticeId).OnDelete(DeleteBehavior.Restrict);
        });
    }
}
