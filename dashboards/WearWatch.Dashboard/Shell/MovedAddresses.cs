using Microsoft.AspNetCore.Rewrite;

namespace WearWatch.Dashboard.Shell;

/// <summary>Addresses that were renamed: old links lead on, old calls of the API are answered as before.</summary>
internal static class MovedAddresses
{
    /// <summary>Pages and files, from and to, as patterns; a browser is sent on for good.</summary>
    private static readonly (string From, string To)[] pages =
    [
        ("^oil(/.*)?$", "lubrication$1"),
        ("^arrivals$", "data-sources"),
        ("^people/keys$", "people/api-keys"),
        ("^chains/([^/]+)/card$", "chains/$1/master-data"),
        (@"^engineering/history/looks\.(\w+)$", "engineering/history/inspections.$1"),
        (@"^engineering/lives/paper\.(\w+)$", "engineering/lives/probability-plot.$1"),
    ];

    /// <summary>Calls of the API; the caller sees no redirect, since a phone or a program may follow none.</summary>
    private static readonly (string From, string To)[] calls =
    [
        ("^api/v1/oil(/.*)?$", "api/v1/lubrication$1"),
        ("^api/v1/looks(/.*)?$", "api/v1/inspections$1"),
        ("^api/v1/chains/([^/]+)/looks$", "api/v1/chains/$1/inspections"),
        ("^api/v1/chains/([^/]+)/card(/changes)?$", "api/v1/chains/$1/master-data$2"),
    ];

    /// <summary>Puts them before the routing, which follows here.</summary>
    public static void UseMovedAddresses(this WebApplication app)
    {
        var rules = new RewriteOptions();
        foreach (var (from, to) in pages) rules.AddRedirect(from, to, StatusCodes.Status308PermanentRedirect);
        foreach (var (from, to) in calls) rules.AddRewrite(from, to, skipRemainingRules: true);
        app.UseRewriter(rules);
        app.UseRouting();
    }
}
