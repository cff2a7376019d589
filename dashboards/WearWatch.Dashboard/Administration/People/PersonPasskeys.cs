using System.Buffers.Text;
using Microsoft.AspNetCore.Identity;
using WearWatch.Plant.People;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Administration.People;

/// <summary>Takes people's passkeys in, knows people by them and withdraws them.</summary>
/// <remarks>
/// What a browser is asked, and what it gives back, is JSON by W3C Web Authentication level 3. The question is kept in a sealed
/// cookie until the answer comes, for five minutes at most.
/// </remarks>
public sealed class PersonPasskeys(PersonSignIn signIn, UserManager<PersonRow> people, PeopleDesk desk, PeopleNews news)
{
    private const int LongestName = 80;

    /// <summary>A person's passkeys, the newest first.</summary>
    public async Task<IReadOnlyList<UserPasskeyInfo>> AskAsync(PersonRow person) =>
        [.. (await people.GetPasskeysAsync(person)).OrderByDescending(p => p.CreatedAt)];

    /// <summary>What the browser makes a passkey from, or what stands against it.</summary>
    /// <remarks>The present password is asked for, so that an unattended session gives nobody a way in.</remarks>
    public async Task<(string? Question, string? Fault)> OfferAsync(PersonRow person, string present)
    {
        if (person.MustChoosePassword) return (null, "Choose your own password first.");
        if (await desk.FaultOfPresentAsync(person, present) is { } fault) return (null, fault);
        var name = person.UserName!;
        var asked = new PasskeyUserEntity { Id = await people.GetUserIdAsync(person), Name = name, DisplayName = name };
        return (await signIn.MakePasskeyCreationOptionsAsync(asked), null);
    }

    /// <summary>Keeps the passkey that a browser made. Says what stands against it; null when it is kept.</summary>
    public async Task<string?> AddAsync(PersonRow person, string name, string answer)
    {
        if (name.Trim() is not { Length: > 0 and <= LongestName } given)
            return $"Give the passkey a name of at most {LongestName} letters, such as the device it is on.";
        if (await WhenAskedAsync(() => signIn.PerformPasskeyAttestationAsync(answer)) is not { Succeeded: true } made)
            return SignInWords.PasskeyNotMade;
        if (made.UserEntity.Id != await people.GetUserIdAsync(person)) return SignInWords.PasskeyNotMade;
        made.Passkey.Name = given;
        var kept = await people.AddOrUpdatePasskeyAsync(person, made.Passkey);
        return kept.Succeeded ? null : SignInWords.PasskeyNotMade;
    }

    /// <summary>Whose passkey a browser used; null for one that is not known here, or whose question is too old.</summary>
    public async Task<PersonRow?> KnowAsync(string answer)
    {
        if (await WhenAskedAsync(() => signIn.PerformPasskeyAssertionAsync(answer)) is not { Succeeded: true } used) return null;
        await people.AddOrUpdatePasskeyAsync(used.User, used.Passkey); // its count of uses, by which a copy is found out
        return used.User;
    }

    /// <summary>Takes a passkey away, and ends every session of the person: the device may be lost.</summary>
    /// <returns>Whether it was there to be taken.</returns>
    public async Task<bool> WithdrawAsync(PersonRow person, string mark)
    {
        if ((await AskAsync(person)).FirstOrDefault(p => MarkOf(p) == mark) is not { } passkey) return false;
        if (!(await people.RemovePasskeyAsync(person, passkey.CredentialId)).Succeeded) return false;
        await people.UpdateSecurityStampAsync(person);
        news.Tell();
        return true;
    }

    /// <summary>How forms name a passkey.</summary>
    public static string MarkOf(UserPasskeyInfo passkey) => Base64Url.EncodeToString(passkey.CredentialId);

    /// <summary>
    /// Looks at an answer; null when nothing was asked, too long ago, or the other question: Identity throws then.
    /// </summary>
    private static async Task<T?> WhenAskedAsync<T>(Func<Task<T>> look)
        where T : class
    {
        try
        {
            return await look();
        }
        catch (InvalidOperationException)
        {
            return null;
        }
    }
}
