using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Files;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Engineer.History.Tables;

/// <summary>The register.</summary>
internal static class ChainTable
{
    public static HistoryTable Of(IDbContextFactory<WearDb> databases) => new HistoryShape<ChainRow>()
        .Whole("id", OfChain.IdMeaning, c => c.Id)
        .Text("chain", OfChain.ChainMeaning, c => c.Name)
        .Columns(ChainColumns.Fields, c => c.ToCard())
        .Table("chains", $"A chain of the register as it stands now.", databases, (db, after) =>
            db.Chains.AsNoTracking().Where(c => c.Id > after).OrderBy(c => c.Id));
}
