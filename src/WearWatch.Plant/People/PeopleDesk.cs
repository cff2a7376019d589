using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.People;

/// <summary>Adds people and changes what they may do. Nobody is ever deleted: entries keep their maker.</summary>
public sealed class PeopleDesk(
    UserManager<PersonRow> people, IDbContextFactory<WearDb> database, PeopleNews news, TimeProvider clock)
{
    private const string TakenLast = "Somebody has to administer: give another person that role first.";

    /// <summary>All people, those who can sign in first.</summary>
    public async Task<IReadOnlyList<PersonRow>> AskAsync(CancellationToken ct = default)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        return await db.People.AsNoTracking().OrderBy(p => p.IsOff).ThenBy(p => p.NormalizedUserName).ToListAsync(ct);
    }

    /// <summary>One person; null for nobody.</summary>
    public Task<PersonRow?> FindAsync(int id) =>
        people.FindByIdAsync(id.ToString(System.Globalization.CultureInfo.InvariantCulture));

    /// <summary>Adds the first person, with every role. When two try at once, the database lets one of them in.</summary>
    public async Task<Added> AddFirstAsync(string name, string password)
    {
        try
        {
            return await AddAsync(New(name, RoleWords.All, isFirst: true), password);
        }
        catch (DbUpdateException) when (people.Users.Any())
        {
            return new Added(
                null, "Somebody was quicker: the administrator is set up. Sign in with the name and password given there.");
        }
    }

    /// <summary>Adds a person with a first password, which the person replaces by an own one before anything else.</summary>
    public Task<Added> AddAsync(string name, PersonRoles roles, string password) =>
        AddAsync(New(name, roles, isFirst: null, mustChoose: true), password);

    /// <summary>Changes what a person may do. Says what stands against it; null when it is done.</summary>
    public async Task<string?> GiveRolesAsync(PersonRow person, PersonRoles roles)
    {
        if (!roles.HasFlag(PersonRoles.Administrator) && await IsLastAdministratorAsync(person)) return TakenLast;
        person.Roles = roles;
        return await KeepAsync(person);
    }

    /// <summary>Switches a person off or on again; whoever is off loses every session at once.</summary>
    public async Task<string?> SwitchAsync(PersonRow person, bool off)
    {
        if (off && await IsLastAdministratorAsync(person)) return TakenLast;
        person.IsOff = off;
        return await KeepAsync(person, endSessions: off);
    }

    /// <summary>Gives a person who forgot the password another one to begin with; frees the PIN and the sign-in too.</summary>
    public async Task<string?> ResetPasswordAsync(PersonRow person, string password, bool mustChoose = true)
    {
        if (await FaultAsync(person, password) is { } fault) return fault;
        person.PasswordHash = people.PasswordHasher.HashPassword(person, password);
        (person.MustChoosePassword, person.LockoutEnd, person.AccessFailedCount, person.PinMisses) = (mustChoose, null, 0, 0);
        return await KeepAsync(person, endSessions: true);
    }

    /// <summary>A person's own new password.</summary>
    public async Task<string?> ChangePasswordAsync(PersonRow person, string old, string password)
    {
        if (await FaultOfPresentAsync(person, old) is { } fault) return fault;
        if (old == password) return "Choose another one than the present.";
        return await ResetPasswordAsync(person, password, mustChoose: false);
    }

    /// <summary>
    /// A person's own PIN for shared tablets. The present password is asked for, so that an unattended session gives nobody a way
    /// in.
    /// </summary>
    public async Task<string?> SetPinAsync(PersonRow person, string present, string pin)
    {
        if (Pin.Fault(pin) is { } unfit) return unfit;
        if (await FaultOfPresentAsync(person, present) is { } fault) return fault;
        (person.PinHash, person.PinMisses) = (people.PasswordHasher.HashPassword(person, pin), 0);
        return await KeepAsync(person, endSessions: true);
    }

    private PersonRow New(string name, PersonRoles roles, bool? isFirst, bool mustChoose = false) =>
        new()
        {
            UserName = name.Trim(),
            Roles = roles,
            JoinedAt = clock.GetUtcNow(),
            IsFirst = isFirst,
            MustChoosePassword = mustChoose,
        };

    private async Task<Added> AddAsync(PersonRow person, string password)
    {
        if (PersonName.Fault(person.UserName!) is { } fault) return new Added(null, fault);
        var result = await people.CreateAsync(person, password);
        if (!result.Succeeded) return new Added(null, Words(result));
        news.Tell();
        return new Added(person, null);
    }

    private async Task<string?> KeepAsync(PersonRow person, bool endSessions = false)
    {
        var result = endSessions ? await people.UpdateSecurityStampAsync(person) : await people.UpdateAsync(person);
        if (!result.Succeeded) return Words(result);
        news.Tell();
        return null;
    }

    /// <summary>What stands against taking a person's present password as told; a wrong one counts towards the lock.</summary>
    public async Task<string?> FaultOfPresentAsync(PersonRow person, string present)
    {
        if (await people.IsLockedOutAsync(person)) return SignInWords.Locked;
        if (await people.CheckPasswordAsync(person, present)) return null;
        await people.AccessFailedAsync(person);
        return "The present password is not right.";
    }

    private async Task<string?> FaultAsync(PersonRow person, string password)
    {
        foreach (var rule in people.PasswordValidators)
            if (await rule.ValidateAsync(people, person, password) is { Succeeded: false } result) return Words(result);
        return null;
    }

    private async Task<bool> IsLastAdministratorAsync(PersonRow person)
    {
        if (person.IsOff || !person.Roles.HasFlag(PersonRoles.Administrator)) return false;
        return !(await AskAsync()).Any(p => p.Id != person.Id && !p.IsOff && p.Roles.HasFlag(PersonRoles.Administrator));
    }

    private static string Words(IdentityResult result) => string.Join(" ", result.Errors.Select(e => e.Description));

    /// <summary>A person who was added, or why none was.</summary>
    /// <param name="Person">The person; null when none was added.</param>
    /// <param name="Fault">What stands against it, for a person; null when nothing does.</param>
    public readonly record struct Added(PersonRow? Person, string? Fault);
}
