using System.Buffers.Text;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Identity;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.People;

/// <summary>Takes people's passkeys in, knows people by them and withdraws them.</summary>
/// <remarks>
/// What a browser is asked, and what it gives back, is JSON by W3C Web Authentication level 3. The question is kept in a sealed
/// cookie until the answer comes, for five minutes at most.
/// </remarks>
public sealed class PasskeyDesk(PersonSignIn signIn, UserManager<PersonRow> people, PeopleDesk desk, PeopleNews news, IHttpContextAccessor http)
{
    private const int LongestName = 80;

    /// <summary>A person's passkeys, the newest first.</summary>
    public async Task<IReadOnlyList<UserPasskeyInfo>> AskAsync(PersonRow person) =>
        [.. (await people.GetPasskeysAsync(person)).OrderByDescending(p => p.CreatedAt)];

    /// <summary>What the browser makes a passkey from, or what stands against it. The present password is asked for, so that an unattended session gives nobody a way in.</summary>
    public async Task<(string? Question, string? Fault)> OfferAsync(PersonRow person, string present)
    {
        if (person.MustChoosePassword) return (null, "Choose your own password first.");
        if (await desk.FaultOfPresentAsync(person, present) is { } fault) return (null, fault);
        var name = person.UserName!;
        return (await signIn.MakePasskeyCreationOptionsAsync(new() { Id = await people.GetUserIdAsync(person), Name = name, DisplayName = name }), null);
    }

    /// <summary>Keeps the passkey that a browser made. Says what stands against it; null when it is kept.</summary>
    public async Task<string?> AddAsync(PersonRow person, string name, string answer)
    {
        if (name.Trim() is not { Length: > 0 and <= LongestName } given) return $"Give the passkey a name of at most {LongestName} letters, such as the device it is on.";
        if (!await IsAskedAsync() || await signIn.PerformPasskeyAttestationAsync(answer) is not { Succeeded: true } made) return SignInWords.PasskeyNotMade;
        if (made.UserEntity.Id != await people.GetUserIdAsync(person)) return SignInWords.PasskeyNotMade;
        made.Passkey.Name = given;
        var kept = await people.AddOrUpdatePasskeyAsync(person, made.Passkey);
        return kept.Succeeded ? null : SignInWords.PasskeyNotMade;
    }

    /// <summary>Whose passkey a browser used; null for one that is not known here, or whose question is too old.</summary>
    public async Task<PersonRow?> KnowAsync(string answer)
    {
        if (!await IsAskedAsync() || await signIn.PerformPasskeyAssertionAsync(answer) is not { Succeeded: true } used) return null;
        await people.AddOrUpdatePasskeyAsync(used.User, used.Passkey); // its count of uses, by which a copy is found out
        return used.User;
    }

    /// <summary>Takes a passkey away, and ends every session of the person: the device may be lost.</summary>
    public async Task WithdrawAsync(PersonRow person, string mark)
    {
        if ((await AskAsync(person)).FirstOrDefault(p => MarkOf(p) == mark) is not { } passkey) return;
        await people.RemovePasskeyAsync(person, passkey.CredentialId);
        await people.UpdateSecurityStampAsync(person);
        news.Tell();
    }

    /// <summary>How forms name a passkey.</summary>
    public static string MarkOf(UserPasskeyInfo passkey) => Base64Url.EncodeToString(passkey.CredentialId);

    private async Task<bool> IsAskedAsync() => (await http.HttpContext!.AuthenticateAsync(IdentityConstants.TwoFactorUserIdScheme)).Succeeded;
}
