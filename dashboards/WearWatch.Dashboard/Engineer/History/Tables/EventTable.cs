using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Files;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Engineer.History.Tables;

/// <summary>All that happened, as it was told.</summary>
internal static class EventTable
{
    public static HistoryTable Of(IDbContextFactory<WearDb> databases) => OfChain.Shape<EventRow>(e => e.Id)
        .Text("event", "what happened, such as replacement, oiling or inspection", x => FileWords.Of(x.Row.Kind))
        .Moment("taken_at", "when", x => x.Row.At)
        .Number("counter_h_before", "hour counter just before", x => x.Row.CounterBeforeH)
        .Number("counter_h_after", "hour counter just after", x => x.Row.CounterAfterH)
        .Text("lot", "supplier's lot of the chain that was fitted", x => x.Row.Lot)
        .Text("oil_method", "how it was oiled", x => x.Row.OilMethod is { } method ? FileWords.Of(method) : null)
        .Text("oil_grade", "with which oil", x => x.Row.OilGrade)
        .Number("oil_amount_ml", "with how much", x => x.Row.OilAmountMl)
        .Text("note", "what else was said", x => x.Row.Note)
        .Whole("corrects_id", "the row that this one replaces", x => x.Row.CorrectsId)
        .YesNo("withdraws", "whether it takes that row out of use", x => x.Row.Withdraws)
        .Text("told_by", "person, program, or file with line", x => x.Row.ToldBy)
        .Moment("received_at", "when it arrived", x => x.Row.ReceivedAt)
        .Table("events", "Something that happened to a chain, as it was told, or a correction of it.", databases,
            (db, after) => from happening in db.Events.AsNoTracking()
                           where happening.Id > after
                           join chain in db.Chains on happening.ChainId equals chain.Id
                           orderby happening.Id
                           select new OfChain<EventRow>(happening, chain.Name));
}
