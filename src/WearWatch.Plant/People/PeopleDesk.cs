using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.People;

/// <summary>Adds people and changes what they may do. Nobody is ever deleted: entries keep their maker.</summary>
public sealed class PeopleDesk(
    UserManager<PersonRow> people, IDbContextFactory<WearDb> database, SessionDesk sessions, SignInTries tries, SecurityLog log,
    PeopleNews news, TimeProvider clock)
{
    private static Phrase TakenLast => $"Somebody has to administer: give another person that role first.";

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
            return await AddAsync(New(name, RoleWords.All, isFirst: true), password, SecurityEventKind.SetUp);
        }
        catch (DbUpdateException) when (people.Users.Any())
        {
            return new Added(
                null, $"Somebody was quicker: the administrator is set up. Sign in with the name and password given there.");
        }
    }

    /// <summary>Adds a person with a first password, which the person replaces by an own one before anything else.</summary>
    public Task<Added> AddAsync(string name, PersonRoles roles, string password) =>
        AddAsync(New(name, roles, isFirst: null, mustChoose: true), password, SecurityEventKind.PersonAdded);

    /// <summary>Adds the person of a company account, who needs no password.</summary>
    internal Task<Added> AddAsync(string name, PersonRoles roles, CompanyIdentity account)
    {
        var person = New(name, roles, isFirst: null);
        (person.Issuer, person.Subject) = (account.Issuer, account.Subject);
        return AddAsync(person, password: null, SecurityEventKind.PersonAdded);
    }

    /// <summary>
    /// Changes what a person may do, which ends the person's sessions. Says what stands against it; null when it is done.
    /// </summary>
    public async Task<Phrase?> GiveRolesAsync(PersonRow person, PersonRoles roles)
    {
        if (!roles.HasFlag(PersonRoles.Administrator) && await IsLastAdministratorAsync(person)) return TakenLast;
        if (person.Roles == roles) return null;
        person.Roles = roles;
        return await KeepAsync(person, SecurityEventKind.RolesChanged, endSessions: true);
    }

    /// <summary>Switches a person off or on again; whoever is off loses every session at once.</summary>
    public async Task<Phrase?> SwitchAsync(PersonRow person, bool off)
    {
        if (off && await IsLastAdministratorAsync(person)) return TakenLast;
        person.IsOff = off;
        return await KeepAsync(
            person, off ? SecurityEventKind.PersonSwitchedOff : SecurityEventKind.PersonSwitchedOn, endSessions: off);
    }

    /// <summary>Gives a person who forgot the password another one to begin with; frees the PIN and the sign-in too.</summary>
    public async Task<Phrase?> ResetPasswordAsync(PersonRow person, string password, bool mustChoose = true)
    {
        if (await FaultAsync(person, password) is { } fault) return fault;
        person.PasswordHash = people.PasswordHasher.HashPassword(person, password);
        (person.MustChoosePassword, person.LockoutEnd, person.PinMisses) = (mustChoose, null, 0);
        await tries.ForgetAsync(person.UserName!, device: null);
        return await KeepAsync(
            person, mustChoose ? SecurityEventKind.PasswordReset : SecurityEventKind.PasswordChanged, endSessions: true);
    }

    /// <summary>A person's own new password.</summary>
    public async Task<Phrase?> ChangePasswordAsync(PersonRow person, string old, string password)
    {
        if (await FaultOfPresentAsync(person, old) is { } fault) return fault;
        if (old == password) return $"Choose another one than the present.";
        return await ResetPasswordAsync(person, password, mustChoose: false);
    }

    /// <summary>
    /// A person's own PIN for shared tablets. The present password is asked for, so that an unattended session gives nobody a way
    /// in.
    /// </summary>
    public async Task<Phrase?> SetPinAsync(PersonRow person, string present, string pin)
    {
        if (Pin.Fault(pin) is { } unfit) return unfit;
        if (await FaultOfPresentAsync(person, present) is { } fault) return fault;
        (person.PinHash, person.PinMisses) = (people.PasswordHasher.HashPassword(person, pin), 0);
        return await KeepAsync(person, SecurityEventKind.PinChanged, endSessions: true);
    }

    /// <summary>Keeps the language that a person chose, for every device.</summary>
    /// <param name="id">The person.</param>
    /// <param name="language">The code of a language.</param>
    /// <param name="ct">Gives up.</param>
    public async Task SpeakAsync(int id, string language, CancellationToken ct = default)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        await db.People.Where(p => p.Id == id).ExecuteUpdateAsync(p => p.SetProperty(r => r.Language, language), ct);
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

    private async Task<Added> AddAsync(PersonRow person, string? password, SecurityEventKind kind)
    {
        if (PersonName.Fault(person.UserName!) is { } fault) return new Added(null, fault);
        var result = password is null ? await people.CreateAsync(person) : await people.CreateAsync(person, password);
        if (!result.Succeeded) return new Added(null, Words(result));
        await log.AddAsync(kind, About(person));
        news.Tell();
        return new Added(person, null);
    }

    private async Task<Phrase?> KeepAsync(PersonRow person, SecurityEventKind kind, bool endSessions)
    {
        if (await people.UpdateAsync(person) is { Succeeded: false } result) return Words(result);
        if (endSessions) await sessions.EndAllAsync(person.Id);
        await log.AddAsync(kind, About(person));
        news.Tell();
        return null;
    }

    private static string About(PersonRow person) => $"{person.UserName} ({RoleWords.List(person.Roles)})";

    /// <summary>
    /// What stands against taking a person's present password as told; wrong ones make the next wait. Of a person without one
    /// a company account is asked that signed in a moment ago.
    /// </summary>
    public async Task<Phrase?> FaultOfPresentAsync(PersonRow person, string present)
    {
        if (person.PasswordHash is null) return await sessions.IsFreshAsync(person.Id) ? null : CompanyWords.NotFresh;
        var (account, device) = (person.UserName!, "of a session");
        if (await tries.CountAsync(account, device, address: "") is { Ticks: > 0 } wait) return SignInWords.Wait(wait);
        if (!await people.CheckPasswordAsync(person, present)) return $"The present password is not right.";
        await tries.ForgetAsync(account, device);
        return null;
    }

    private async Task<Phrase?> FaultAsync(PersonRow person, string password)
    {
        foreach (var rule in people.PasswordValidators)
            if (await rule.ValidateAsync(people, person, password) is { Succeeded: false } result) return Words(result);
        return null;
    }

    private async Task<bool> IsLastAdministratorAsync(PersonRow person)
    {
        if (person.IsOff || !person.Roles.HasFlag(PersonRoles.Administrator)) return false;
        var others = (await AskAsync()).Where(p => p.Id != person.Id).AsQueryable().Where(PersonRow.CanComeIn(clock.GetUtcNow()));
        return !others.Any(p => p.Roles.HasFlag(PersonRoles.Administrator));
    }

    private static Phrase Words(IdentityResult result) => Phrase.Join(" ", result.Errors.Select(IdentityWords.Of));

    /// <summary>A person who was added, or why none was.</summary>
    /// <param name="Person">The person; null when none was added.</param>
    /// <param name="Fault">What stands against it, for a person; null when nothing does.</param>
    public readonly record struct Added(PersonRow? Person, Phrase? Fault);
}
