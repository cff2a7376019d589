using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Files;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Engineer.History.Tables;

/// <summary>All readings as they were told.</summary>
internal static class ReadingTable
{
    public static HistoryTable Of(IDbContextFactory<WearDb> databases) => OfChain.Shape<ReadingRow>(r => r.Id)
        .Columns(ReadingColumns.All, x => x.Row.ToReading(x.Chain))
        .Number("length_mm", $"length over them in millimetres", x => x.Row.LengthMm)
        .Text("length_as_told", $"the length as it was written, all of it, with its unit", x => x.Row.LengthAsTold)
        .Number("length_uncertainty_mm", $"standard uncertainty of the length, where sensors gave it",
            x => x.Row.LengthUncertaintyMm)
        .Text("standing", $"accepted, or waiting for a person", x => FileWords.Of(x.Row.Standing))
        .Text("why_waiting", $"why it waits", x => x.Row.WhyWaiting.ToString())
        .Text("note", $"why it was corrected or withdrawn", x => x.Row.Note)
        .Whole("corrects_id", $"the row that this one replaces", x => x.Row.CorrectsId)
        .YesNo("withdraws", $"whether it takes that row out of use", x => x.Row.Withdraws)
        .Text("told_by", $"person, program, or file with line", x => x.Row.ToldBy)
        .Moment("received_at", $"when it arrived", x => x.Row.ReceivedAt)
        .Table("readings", $"A reading as recorded, or a correction of one: a row that others correct or withdraw no longer "
            + $"counts.", databases,
            (db, after) => from reading in db.Readings.AsNoTracking()
                           where reading.Id > after
                           join chain in db.Chains on reading.ChainId equals chain.Id
                           orderby reading.Id
                           select new OfChain<ReadingRow>(reading, chain.Name));
}
