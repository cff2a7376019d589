using System.Linq.Expressions;
using Microsoft.AspNetCore.Identity;

namespace WearWatch.Storage.Rows;

/// <summary>A person of the plant. The name is unique and stays, since entries are kept under it.</summary>
public sealed class PersonRow : IdentityUser<int>
{
    public PersonRoles Roles { get; set; }

    public DateTimeOffset JoinedAt { get; init; }

    /// <summary>Switched off: cannot sign in any more; what the person entered stays.</summary>
    public bool IsOff { get; set; }

    /// <summary>True for the one who set the plant up, null for all others: the index on it lets only one in.</summary>
    public bool? IsFirst { get; init; }

    /// <summary>
    /// Set while the password is one that an administrator chose: until the person has chosen an own one, no role counts.
    /// </summary>
    public bool MustChoosePassword { get; set; }

    /// <summary>The hash of the PIN for shared tablets; null while none is set.</summary>
    public string? PinHash { get; set; }

    /// <summary>Wrong PINs since the last right one.</summary>
    public int PinMisses { get; set; }

    /// <summary>The OpenID provider of the person's company account; null without one.</summary>
    public string? Issuer { get; set; }

    /// <summary>The person's number there, which never changes; null without a company account.</summary>
    public string? Subject { get; set; }

    /// <summary>
    /// Until when the provider's last word counts: after that nothing lets the person in but the company account itself. Null
    /// without one.
    /// </summary>
    public DateTimeOffset? VouchedUntil { get; set; }

    /// <summary>The code of the language that the person chose; null while none was.</summary>
    public string? Language { get; set; }

    /// <summary>Whether the provider of a company account stands for the person no more.</summary>
    public bool IsDisowned(DateTimeOffset now) => VouchedUntil <= now;

    /// <summary>Who can come in at a moment: nobody who is switched off or whose company account counts no more.</summary>
    public static Expression<Func<PersonRow, bool>> CanComeIn(DateTimeOffset now) =>
        person => !person.IsOff && (person.VouchedUntil == null || person.VouchedUntil > now);
}
