using Microsoft.EntityFrameworkCore;
using WearWatch.Dashboard.Kit.People;
using WearWatch.Plant.Intake;
using WearWatch.Storage;

namespace WearWatch.Dashboard.Administration.Importing;

/// <summary>The refused rows of a past import as a file.</summary>
public static class RefusedRowsFile
{
    public static void MapRefusedRows(this IEndpointRouteBuilder app) => app.MapGet("/import/{id:int}/refused.csv",
        async (int id, IDbContextFactory<WearDb> databases, CancellationToken ct) =>
        {
            await using var db = await databases.CreateDbContextAsync(ct);
            return await db.Imports.AsNoTracking().SingleOrDefaultAsync(i => i.Id == id, ct) is { RefusedRows.Length: > 0 } past
                ? Results.File(RefusedRowsLink.Bytes(RefusedRows.TextOf(past.RefusedRows, why => T[why])),
                    "text/csv; charset=utf-8", RefusedRowsLink.FileName(past.FileName))
                : Results.NotFound();
        }).RequireAuthorization(Allowed.KeepRegister);
}
