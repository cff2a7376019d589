using System.ComponentModel.DataAnnotations;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.People;

/// <summary>The settings of the section <c>WearWatch:OpenId</c>: sign-in with the company's accounts.</summary>
/// <remarks>OpenID Connect Core 1.0, code flow with PKCE (RFC 7636).</remarks>
public sealed class OpenIdOptions
{
    /// <summary>The provider's address, such as <c>https://login.example.org/plant</c>; empty for none.</summary>
    public string Authority { get; set; } = "";

    /// <summary>This program's name at the provider.</summary>
    public string ClientId { get; set; } = "";

    /// <summary>This program's secret there.</summary>
    public string ClientSecret { get; set; } = "";

    /// <summary>What people call that account, as the sign-in says it.</summary>
    public string Name { get; set; } = "company account";

    /// <summary>
    /// What the provider is asked for. With <c>offline_access</c> it can be asked later whether a person is still there.
    /// </summary>
    public string Scopes { get; set; } = "openid profile offline_access";

    /// <summary>Where the provider says what a person is called.</summary>
    public string NameClaim { get; set; } = "name";

    /// <summary>Where it says to which groups a person belongs.</summary>
    public string GroupsClaim { get; set; } = "groups";

    /// <summary>
    /// What each group may do, such as <c>"chain-crew": "technician"</c>; <c>none</c> reads only. Who is in none of them does
    /// not come in. Empty: whoever the provider knows comes in, and an administrator gives the roles.
    /// </summary>
    public Dictionary<string, PersonRoles> Groups { get; } = [];

    /// <summary>
    /// How often the provider is asked whether who is signed in may still be; from a tenth of a second to a day.
    /// </summary>
    [Range(typeof(TimeSpan), "00:00:00.1", "1.00:00:00", ConvertValueInInvariantCulture = true,
        ParseLimitsInInvariantCulture = true)]
    public TimeSpan Check { get; set; } = TimeSpan.FromMinutes(5);

    /// <summary>So long the provider's last word counts while it cannot be asked; an hour to a year.</summary>
    [Range(typeof(TimeSpan), "01:00:00", "365.00:00:00", ConvertValueInInvariantCulture = true,
        ParseLimitsInInvariantCulture = true)]
    public TimeSpan Lapse { get; set; } = TimeSpan.FromDays(14);

    /// <summary>Whether a provider is set.</summary>
    public bool IsOn => Authority.Length > 0;

    /// <summary>Whether the provider's groups decide what a person may do.</summary>
    public bool GroupsDecide => Groups.Count > 0;

    /// <summary>What somebody in these groups may do; null for one who may not come in.</summary>
    public PersonRoles? RolesOf(IEnumerable<string> groups)
    {
        var known = groups.Where(Groups.ContainsKey).Select(g => Groups[g]).ToList();
        return known.Count == 0 && GroupsDecide ? null : known.Aggregate(PersonRoles.None, (all, one) => all | one);
    }
}
