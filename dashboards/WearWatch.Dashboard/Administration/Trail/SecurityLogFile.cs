using WearWatch.Dashboard.Kit.Exports;
using WearWatch.Dashboard.Kit.People;
using WearWatch.Plant.People;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Administration.Trail;

/// <summary>The security log as a file; that it was taken is a line of it.</summary>
internal static class SecurityLogFile
{
    /// <summary>Its address.</summary>
    public const string Address = "/people/log.csv";

    private static readonly string[] header = ["at", "what", "who", "about", "address"];

    public static void MapSecurityLog(this IEndpointRouteBuilder app) =>
        app.MapGet(Address, FileAsync).RequireAuthorization(Allowed.Administer).ExcludeFromDescription();

    private static async Task<IResult> FileAsync(SecurityLogQuery query, SecurityLog log, CancellationToken ct)
    {
        await log.AddAsync(SecurityEventKind.Exported, "security log", ct: ct);
        var lines = await query.AskAsync(kind: null, most: int.MaxValue, ct);
        return CsvExport.File("security-log.csv", header, lines.Select(l =>
            (IReadOnlyList<object?>)[l.At, l.Kind.ToString(), l.Who, l.About, l.Address]));
    }
}
