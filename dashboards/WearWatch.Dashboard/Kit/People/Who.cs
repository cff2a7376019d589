using System.Globalization;
using System.Security.Claims;
using WearWatch.Plant.People;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Kit.People;

/// <summary>Who speaks: a person, a machine with a key, or whoever sits at this machine before anybody is set up.</summary>
public static class Who
{
    private const string OpenScheme = "open until set up";
    private const string Stamp = "stamp";
    private const string Tablet = "tablet";

    /// <summary>The one who sits at this machine while nobody is set up: may do everything, and has no name.</summary>
    public static ClaimsPrincipal Open { get; } = new(new ClaimsIdentity(RoleClaims(RoleWords.All), OpenScheme));

    /// <summary>A person, signed in.</summary>
    /// <param name="person">The person as the database knows him now.</param>
    /// <param name="scheme">The scheme of the session.</param>
    /// <param name="tabletId">The shared tablet on which the session was begun by PIN; there nobody administers.</param>
    public static ClaimsPrincipal Of(PersonRow person, string scheme, int? tabletId = null)
    {
        var roles = person.MustChoosePassword ? PersonRoles.None : tabletId is null
            ? person.Roles
            : person.Roles & ~PersonRoles.Administrator;
        List<Claim> claims =
        [
            new(ClaimTypes.NameIdentifier, person.Id.ToString(CultureInfo.InvariantCulture)),
            new(ClaimTypes.Name, person.UserName!),
            new(Stamp, person.SecurityStamp!),
            .. RoleClaims(roles),
        ];
        if (tabletId is { } id) claims.Add(new(Tablet, id.ToString(CultureInfo.InvariantCulture)));
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

    /// <summary>The name under which entries are kept; null while nobody is set up.</summary>
    public static string? KeptName(this ClaimsPrincipal who) => who.Identity?.Name;

    /// <summary>The state of the person's secrets when the session began.</summary>
    public static string? SecretStamp(this ClaimsPrincipal who) => who.FindFirstValue(Stamp);

    /// <summary>The roles in words.</summary>
    public static IReadOnlyList<string> RoleNames(this ClaimsPrincipal who) =>
        [.. who.FindAll(ClaimTypes.Role).Select(c => c.Value)];

    private static int? Number(ClaimsPrincipal who, string claim) =>
        int.TryParse(who.FindFirstValue(claim), CultureInfo.InvariantCulture, out var number) ? number : null;

    private static IEnumerable<Claim> RoleClaims(PersonRoles roles) =>
        RoleWords.Of(roles).Select(word => new Claim(ClaimTypes.Role, word));
}
