using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Files;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Engineer.History.Tables;

/// <summary>All readings of parts beside the elongation, withdrawals among them.</summary>
internal static class PartReadingTable
{
    public static HistoryTable Of(IDbContextFactory<WearDb> databases) => OfChain.Shape<PartReadingRow>(p => p.Id)
        .Moment("taken_at", $"when", x => x.Row.TakenAt)
        .Number("counter_h", $"hour counter then", x => x.Row.CounterH)
        .Text("part", $"which part", x => FileWords.Of(x.Row.Part))
        .Text("place", $"which one, where", x => x.Row.Place)
        .Number("mm", $"the reading in millimetres", x => x.Row.Mm)
        .Number("new_mm", $"its size when new, where it was recorded with the reading", x => x.Row.NewMm)
        .Number("limit_mm", $"the plant's own limit, where it was recorded with the reading", x => x.Row.LimitMm)
        .Text("limit_source", $"who says so", x => x.Row.LimitSource)
        .Text("written", $"as it was written, with its unit", x => x.Row.Written)
        .Whole("corrects_id", $"the reading that it withdraws", x => x.Row.CorrectsId)
        .YesNo("withdraws", $"whether it withdraws that", x => x.Row.Withdraws)
        .Text("note", $"why it was withdrawn", x => x.Row.Note)
        .Text("told_by", $"person or program", x => x.Row.ToldBy)
        .Moment("received_at", $"when it arrived", x => x.Row.ReceivedAt)
        .Table("part_readings", $"Readings of parts and sprockets beside the elongation.", databases,
            (db, after) => from part in db.PartReadings.AsNoTracking()
                           where part.Id > after
                           join chain in db.Chains on part.ChainId equals chain.Id
                           orderby part.Id
                           select new OfChain<PartReadingRow>(part, chain.Name));
}
