using Microsoft.AspNetCore.Identity;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.People;

/// <summary>Lets people in by name and password.</summary>
public sealed class SignInDesk(
    UserManager<PersonRow> people, SignInTries tries, SecurityLog log, IOrigin origin, TimeProvider clock)
{
    private static readonly PersonRow nobody = new();

    /// <summary>Tries a password.</summary>
    /// <param name="name">The name as it was typed.</param>
    /// <param name="password">The password.</param>
    /// <param name="device">The device's mark, if that person has come in from it before.</param>
    /// <param name="ct">Gives up.</param>
    public async Task<Answer> TryAsync(
        string name, string password, Func<PersonRow, string?> device, CancellationToken ct = default)
    {
        var person = await people.FindByNameAsync(name);
        var (account, mark) = (person?.UserName ?? name, person is null ? null : device(person));
        if (await tries.CountAsync(account, mark, origin.Address, ct) is { Ticks: > 0 } wait)
        {
            await log.AddAsync(SecurityEventKind.SignInDelayed, about: name, ct: ct);
            return new Answer(null, SignInWords.Wait(wait));
        }

        if (!await IsRightAsync(person, password))
        {
            await log.AddAsync(SecurityEventKind.SignInFailed, about: name, ct: ct);
            return new Answer(null, SignInWords.Wrong);
        }

        if (person!.IsOff) return new Answer(null, SignInWords.Off);
        if (person.IsDisowned(clock.GetUtcNow())) return new Answer(null, CompanyWords.Disowned);
        await tries.ForgetAsync(account, mark, ct);
        return new Answer(person, Phrase.None);
    }

    // An unknown name costs as much time as a known one, so that the clock does not tell which names there are.
    private async Task<bool> IsRightAsync(PersonRow? person, string password)
    {
        if (person is not null) return await people.CheckPasswordAsync(person, password);
        people.PasswordHasher.HashPassword(nobody, password);
        return false;
    }

    /// <summary>Whom the password let in, or why nobody.</summary>
    /// <param name="Person">The person; null for nobody.</param>
    /// <param name="Fault">What stands against it; empty for a person.</param>
    public readonly record struct Answer(PersonRow? Person, Phrase Fault);
}
