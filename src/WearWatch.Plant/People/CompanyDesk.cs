using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Options;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.People;

/// <summary>
/// Lets people in by their company accounts. Who has one is in as long as the OpenID provider vouches for the person.
/// </summary>
public sealed class CompanyDesk(
    UserManager<PersonRow> people, PeopleDesk desk, SessionDesk sessions, SecurityLog log, PeopleNews news,
    IOptions<OpenIdOptions> options, TimeProvider clock)
{
    /// <summary>The person of a company account, who is added at the first sign-in; or why nobody comes in.</summary>
    public async Task<(PersonRow? Person, Phrase? Fault)> LetInAsync(CompanyIdentity who)
    {
        var person = await FindAsync(who);
        if (options.Value.RolesOf(who.Groups) is not { } roles)
        {
            if (person is not null) await DisownAsync(person);
            return (null, CompanyWords.NoGroup);
        }

        Phrase? fault = null;
        if (person is null) (person, fault) = await AddAsync(who, roles);
        if (person is null) return (null, fault);
        if (person.IsOff) return (null, SignInWords.Off);
        await VouchAsync(person, roles);
        return (person, null);
    }

    /// <summary>Connects a person's company account. Says what stands against it; null when it is done.</summary>
    public async Task<Phrase?> ConnectAsync(PersonRow person, CompanyIdentity who)
    {
        if (await FindAsync(who) is { } other && other.Id != person.Id) return CompanyWords.Another(other.UserName!);
        if (options.Value.RolesOf(who.Groups) is not { } roles) return CompanyWords.NoGroup;
        (person.Issuer, person.Subject) = (who.Issuer, who.Subject);
        await VouchAsync(person, roles);
        await log.AddAsync(SecurityEventKind.CompanyConnected, person.UserName!);
        return null;
    }

    /// <summary>Takes the company account from a person, who then needs a password. Nothing happens to one without.</summary>
    public async Task DisconnectAsync(PersonRow person)
    {
        if (person.Subject is null) return;
        (person.Issuer, person.Subject, person.VouchedUntil) = (null, null, null);
        await people.UpdateAsync(person);
        await sessions.EndAllAsync(person.Id);
        await log.AddAsync(SecurityEventKind.CompanyDisconnected, person.UserName!);
    }

    /// <summary>The provider still vouches for a person who is signed in; where groups decide, it said which.</summary>
    public async Task RenewAsync(int personId, IReadOnlyCollection<string> groups)
    {
        if (await desk.FindAsync(personId) is not { Subject: not null } person) return;
        if (options.Value.RolesOf(groups) is { } roles) await VouchAsync(person, roles);
        else await DisownAsync(person);
    }

    /// <summary>
    /// The provider vouches for a person no more: every session ends, and PIN, passkey and password let nobody in until the
    /// company account does.
    /// </summary>
    public async Task DisownAsync(PersonRow person)
    {
        person.VouchedUntil = clock.GetUtcNow();
        await people.UpdateAsync(person);
        await sessions.EndAllAsync(person.Id);
        await log.AddAsync(SecurityEventKind.CompanyWithdrew, person.UserName!);
    }

    private Task<PersonRow?> FindAsync(CompanyIdentity who) =>
        people.Users.SingleOrDefaultAsync(p => p.Issuer == who.Issuer && p.Subject == who.Subject);

    private async Task<(PersonRow?, Phrase?)> AddAsync(CompanyIdentity who, PersonRoles roles)
    {
        var name = who.NameHere;
        if (await people.FindByNameAsync(name) is { } taken)
        {
            if (taken.Subject is null) return (null, CompanyWords.NameTaken(name));
            name = (who with { Name = $"{name} {who.Account}" }).NameHere; // two people of one name
        }

        try
        {
            var (person, fault) = await desk.AddAsync(name, roles, who);
            return (person, fault);
        }
        catch (DbUpdateException) when (people.Users.Any(p => p.Issuer == who.Issuer && p.Subject == who.Subject))
        {
            return (null, CompanyWords.Failed); // came in on two devices at once: the next try finds the person
        }
    }

    private async Task VouchAsync(PersonRow person, PersonRoles roles)
    {
        person.VouchedUntil = clock.GetUtcNow() + options.Value.Lapse;
        await people.UpdateAsync(person);
        // The last administrator stays one, whatever the groups say.
        if (options.Value.GroupsDecide) await desk.GiveRolesAsync(person, roles);
        news.Tell();
    }
}
