using Microsoft.EntityFrameworkCore;
using WearWatch.Storage.Rows;

namespace WearWatch.Storage;

/// <summary>How sessions, tries at the door and the security log are laid out.</summary>
internal static class SecurityTables
{
    private const int LongestSubject = 64;
    private const int LongestName = 200;

    public static void Describe(ModelBuilder model)
    {
        model.Entity<SessionRow>(session =>
        {
            session.Property(s => s.Id).HasMaxLength(LongestSubject);
            session.HasIndex(s => s.PersonId);
            session.HasOne<PersonRow>().WithMany().HasForeignKey(s => s.PersonId).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<CompanySessionRow>(session =>
        {
            session.HasKey(s => s.SessionId);
            session.Property(s => s.SessionId).HasMaxLength(LongestSubject);
            session.HasOne<SessionRow>().WithOne().HasForeignKey<CompanySessionRow>(s => s.SessionId)
                .OnDelete(DeleteBehavior.Cascade);
            session.HasIndex(s => s.CheckedAt);
        });
        model.Entity<SignInTryRow>(one =>
        {
            one.HasKey(t => t.Subject);
            one.Property(t => t.Subject).HasMaxLength(LongestSubject);
            one.HasIndex(t => t.LastAt);
        });
        model.Entity<SecurityEventRow>(line =>
        {
            line.HasIndex(l => l.At);
            line.Property(l => l.Who).HasMaxLength(LongestName);
            line.Property(l => l.About).HasMaxLength(LongestName);
        });
    }
}
