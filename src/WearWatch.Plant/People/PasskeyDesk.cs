using System.Buffers.Text;
using Microsoft.AspNetCore.Identity;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.People;

/// <summary>Keeps people's passkeys and withdraws them.</summary>
public sealed class PasskeyDesk(UserManager<PersonRow> people, SessionDesk sessions, SecurityLog log)
{
    private const int LongestName = 80;

    /// <summary>A person's passkeys, the newest first.</summary>
    public async Task<IReadOnlyList<UserPasskeyInfo>> AskAsync(PersonRow person) =>
        [.. (await people.GetPasskeysAsync(person)).OrderByDescending(p => p.CreatedAt)];

    /// <summary>What stands against a passkey's name; null when nothing does.</summary>
    public static Phrase? FaultOf(string name) => name.Trim().Length is > 0 and <= LongestName
        ? null
        : Phrase.Of($"Give the passkey a name of at most {LongestName} letters, such as the device it is on.");

    /// <summary>Keeps a passkey that a browser made. Says what stands against it; null when it is kept.</summary>
    public async Task<Phrase?> KeepAsync(PersonRow person, string name, UserPasskeyInfo passkey)
    {
        if (FaultOf(name) is { } fault) return fault;
        passkey.Name = name.Trim();
        if (!(await people.AddOrUpdatePasskeyAsync(person, passkey)).Succeeded) return SignInWords.PasskeyNotMade;
        await log.AddAsync(SecurityEventKind.PasskeyAdded, person.UserName!);
        return null;
    }

    /// <summary>Keeps that a passkey was used: its count of uses, by which a copy is found out.</summary>
    public Task UsedAsync(PersonRow person, UserPasskeyInfo passkey) => people.AddOrUpdatePasskeyAsync(person, passkey);

    /// <summary>Takes a passkey away, and ends every session of the person: the device may be lost.</summary>
    /// <returns>Whether it was there to be taken.</returns>
    public async Task<bool> WithdrawAsync(PersonRow person, string mark)
    {
        if ((await AskAsync(person)).FirstOrDefault(p => MarkOf(p) == mark) is not { } passkey) return false;
        if (!(await people.RemovePasskeyAsync(person, passkey.CredentialId)).Succeeded) return false;
        await sessions.EndAllAsync(person.Id);
        await log.AddAsync(SecurityEventKind.PasskeyWithdrawn, person.UserName!);
        return true;
    }

    /// <summary>How forms name a passkey.</summary>
    public static string MarkOf(UserPasskeyInfo passkey) => Base64Url.EncodeToString(passkey.CredentialId);
}
