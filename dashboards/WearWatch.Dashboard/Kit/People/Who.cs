using System.Globalization;
using System.Security.Claims;
using WearWatch.Plant.People;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Kit.People;

/// <summary>Who speaks: a person, a machine with a key, or whoever sits at this machine before anybody is set up.</summary>
public static class Who
{
    private const string OpenScheme = "open until set up";
    private const string Session = "session";
    private const string Tablet = "tablet";
    private const string Tongue = "language";

    /// <summary>The one who sits at this machine while nobody is set up: may do everything, and has no name.</summary>
    public static ClaimsPrincipal Open { get; } = new(new ClaimsIdentity(RoleClaims(RoleWords.All), OpenScheme));

    /// <summary>A person, signed in.</summary>
    /// <param name="person">The person as the database knows him now.</param>
    /// <param name="scheme">The scheme of the session.</param>
    /// <param name="session">The session; on a shared tablet nobody administers.</param>
    public static ClaimsPrincipal Of(PersonRow person, string scheme, SessionRow session)
    {
        var roles = person.MustChoosePassword ? PersonRoles.None : session.TabletId is null
            ? person.Roles
            : person.Roles & ~PersonRoles.Administrator;
        List<Claim> claims =
        [
            new(ClaimTypes.NameIdentifier, person.Id.ToString(CultureInfo.InvariantCulture)),
            new(ClaimTypes.Name, person.UserName!),
            new(Session, session.Id),
            .. RoleClaims(roles),
        ];
        if (person.Language is { } language) claims.Add(new(Tongue, language));
        if (session.TabletId is { } id) claims.Add(new(Tablet, id.ToString(CultureInfo.InvariantCulture)));
        return new(new ClaimsIdentity(claims, scheme));
    }

    /// <summary>A machine with a key. Its name cannot be a person's, since people's names have no brackets.</summary>
    public static ClaimsPrincipal Of(ApiKeyRow key, string scheme) =>
        new(new ClaimsIdentity([new(ClaimTypes.Name, key.Name + " (key)"), .. RoleClaims(key.Roles)], scheme));

    /// <summary>Whether nobody is set up yet.</summary>
    public static bool IsOpen(this ClaimsPrincipal who) => who.Identity?.AuthenticationType == OpenScheme;

    /// <summary>Whether it is a planner.</summary>
    public static bool IsPlanner(this ClaimsPrincipal who) =>
        RoleWords.Of(PersonRoles.Planner).Any(who.IsInRole);

    /// <summary>The person's number; null for a machine, and for nobody.</summary>
    public static int? PersonId(this ClaimsPrincipal who) => Number(who, ClaimTypes.NameIdentifier);

    /// <summary>The shared tablet of a session that was begun by PIN.</summary>
    public static int? TabletId(this ClaimsPrincipal who) => Number(who, Tablet);

    /// <summary>The code of the language that the person chose; null while none was, and for a machine.</summary>
    public static string? Language(this ClaimsPrincipal who) => who.FindFirstValue(Tongue);

    /// <summary>The name under which entries are kept; null while nobody is set up.</summary>
    public static string? KeptName(this ClaimsPrincipal who) => who.Identity?.Name;

    /// <summary>The session's number; null for a machine, and for nobody.</summary>
    public static string? SessionId(this ClaimsPrincipal who) => who.FindFirstValue(Session);

    /// <summary>The roles in words.</summary>
    public static IReadOnlyList<string> RoleNames(this ClaimsPrincipal who) =>
        [.. who.FindAll(ClaimTypes.Role).Select(c => c.Value)];

    private static int? Number(ClaimsPrincipal who, string claim) =>
        int.TryParse(who.FindFirstValue(claim), CultureInfo.InvariantCulture, out var number) ? number : null;

    private static IEnumerable<Claim> RoleClaims(PersonRoles roles) =>
        RoleWords.Of(roles).Select(word => new Claim(ClaimTypes.Role, word));
}
