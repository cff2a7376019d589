using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Files;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Engineer.History.Tables;

/// <summary>All that happened, as it was told.</summary>
internal static class EventTable
{
    public static HistoryTable Of(IDbContextFactory<WearDb> databases) => OfChain.Shape<EventRow>(e => e.Id)
        .Columns(EventColumns.All, x => x.Row.ToEvent(x.Chain))
        .Whole("corrects_id", $"the row that this one replaces", x => x.Row.CorrectsId)
        .YesNo("withdraws", $"whether it takes that row out of use", x => x.Row.Withdraws)
        .Text("told_by", $"person, program, or file with line", x => x.Row.ToldBy)
        .Moment("received_at", $"when it arrived", x => x.Row.ReceivedAt)
        .Table("events", $"Something that happened to a chain, as it was recorded, or a correction of it.", databases,
            (db, after) => from happening in db.Events.AsNoTracking()
                           where happening.Id > after
                           join chain in db.Chains on happening.ChainId equals chain.Id
                           orderby happening.Id
                           select new OfChain<EventRow>(happening, chain.Name));
}
