using Microsoft.AspNetCore.Identity;
using WearWatch.Plant.People;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Administration.People;

/// <summary>Asks a browser for a passkey, and reads what it gives back.</summary>
/// <remarks>
/// What a browser is asked, and what it gives back, is JSON by W3C Web Authentication level 3. The question is kept in a sealed
/// cookie until the answer comes, for five minutes at most.
/// </remarks>
public sealed class PersonPasskeys(
    PersonSignIn signIn, UserManager<PersonRow> people, PeopleDesk desk, PasskeyDesk passkeys)
{
    /// <summary>What the browser makes a passkey from, or what stands against it.</summary>
    /// <remarks>The present password is asked for, so that an unattended session gives nobody a way in.</remarks>
    public async Task<(string? Question, Phrase? Fault)> OfferAsync(PersonRow person, string present)
    {
        if (person.MustChoosePassword) return (null, $"Choose your own password first.");
        if (await desk.FaultOfPresentAsync(person, present) is { } fault) return (null, fault);
        var name = person.UserName!;
        var asked = new PasskeyUserEntity { Id = await people.GetUserIdAsync(person), Name = name, DisplayName = name };
        return (await signIn.MakePasskeyCreationOptionsAsync(asked), null);
    }

    /// <summary>Has the passkey that a browser made kept. Says what stands against it; null when it is kept.</summary>
    public async Task<Phrase?> AddAsync(PersonRow person, string name, string answer)
    {
        if (PasskeyDesk.FaultOf(name) is { } fault) return fault;
        if (await WhenAskedAsync(() => signIn.PerformPasskeyAttestationAsync(answer)) is not { Succeeded: true } made)
            return SignInWords.PasskeyNotMade;
        return made.UserEntity.Id == await people.GetUserIdAsync(person)
            ? await passkeys.KeepAsync(person, name, made.Passkey)
            : SignInWords.PasskeyNotMade;
    }

    /// <summary>Whose passkey a browser used; null for one that is not known here, or whose question is too old.</summary>
    public async Task<PersonRow?> KnowAsync(string answer)
    {
        if (await WhenAskedAsync(() => signIn.PerformPasskeyAssertionAsync(answer)) is not { Succeeded: true } used) return null;
        await passkeys.UsedAsync(used.User, used.Passkey);
        return used.User;
    }

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
