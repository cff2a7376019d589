using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using WearWatch.Storage.Rows;

namespace WearWatch.Storage;

/// <summary>How people, their passkeys, shared tablets and keys of machines are laid out.</summary>
internal static class PeopleTables
{
    private const int LongestCredentialId = 1024; // ASP.NET Core Identity's own bound
    private const int LongestName = 80;
    private const int LongestAddress = 400;
    private const int LongestSubject = 255; // OpenID Connect Core 1.0, 2: at most 255 characters

    public static void Describe(ModelBuilder model)
    {
        model.Entity<PersonRow>(person =>
        {
            person.ToTable("People");
            person.Property(p => p.UserName).HasColumnName("Name").HasMaxLength(LongestName);
            person.Property(p => p.NormalizedUserName).HasColumnName("NormalizedName").HasMaxLength(LongestName);
            person.HasIndex(p => p.NormalizedUserName).IsUnique();
            person.HasIndex(p => p.IsFirst).IsUnique(); // the database itself lets one first person in; the others have null
            person.Property(p => p.Issuer).HasMaxLength(LongestAddress);
            person.Property(p => p.Subject).HasMaxLength(LongestSubject);
            person.HasIndex(p => new { p.Issuer, p.Subject }).IsUnique();
            person.Property(p => p.ConcurrencyStamp).IsConcurrencyToken();
            // A plant's people sign in by name, passkey or PIN: nothing is kept of mail, telephone and codes sent to them.
            person.Ignore(p => p.Email).Ignore(p => p.NormalizedEmail).Ignore(p => p.EmailConfirmed);
            person.Ignore(p => p.PhoneNumber).Ignore(p => p.PhoneNumberConfirmed).Ignore(p => p.TwoFactorEnabled);
        });
        model.Entity<IdentityUserPasskey<int>>(passkey =>
        {
            passkey.ToTable("Passkeys");
            passkey.HasKey(p => p.CredentialId);
            passkey.Property(p => p.CredentialId).HasMaxLength(LongestCredentialId);
            passkey.OwnsOne(p => p.Data).ToJson();
            passkey.HasOne<PersonRow>().WithMany().HasForeignKey(p => p.UserId).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<TabletRow>().HasIndex(t => t.Name).IsUnique();
        model.Entity<ApiKeyRow>(key =>
        {
            key.HasIndex(k => k.Name).IsUnique();
            key.HasIndex(k => k.Hash).IsUnique();
        });
    }
}
