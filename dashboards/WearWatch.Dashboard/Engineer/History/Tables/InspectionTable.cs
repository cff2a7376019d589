using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Files;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Engineer.History.Tables;

/// <summary>All looks at chains.</summary>
internal static class InspectionTable
{
    public static HistoryTable Of(IDbContextFactory<WearDb> databases) => OfChain.Shape<InspectionRow>(l => l.Id)
        .Moment("taken_at", $"when", x => x.Row.TakenAt)
        .Whole("points", $"how many points were looked at", x => x.Row.Findings.Count)
        .Text("found", $"at which of them something was found, with semicolons between", x => Found(x.Row))
        .Text("notes", $"what was written to these",
            x => string.Join("; ", x.Row.Findings.Where(f => f.Found && f.Note.Length > 0).Select(f => f.Note)))
        .Text("told_by", $"person or program", x => x.Row.ToldBy)
        .Moment("received_at", $"when it arrived", x => x.Row.ReceivedAt)
        .Table("inspections", $"An inspection of a chain as it was recorded.", databases,
            (db, after) => from look in db.Looks.AsNoTracking()
                           where look.Id > after
                           join chain in db.Chains on look.ChainId equals chain.Id
                           orderby look.Id
                           select new OfChain<InspectionRow>(look, chain.Name));

    private static string Found(InspectionRow look) =>
        string.Join("; ", look.Findings.Where(f => f.Found).Select(f => FileWords.Of(f.Point)));
}
