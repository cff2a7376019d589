using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Files;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Engineer.History.Tables;

/// <summary>All measures of round links, corrections and withdrawals among them.</summary>
internal static class LinkMeasureTable
{
    public static HistoryTable Of(IDbContextFactory<WearDb> databases) => OfChain.Shape<LinkMeasureRow>(m => m.Id)
        .Moment("taken_at", $"when", x => x.Row.TakenAt)
        .Number("counter_h", $"hour counter then", x => x.Row.CounterH)
        .Text("place", $"which link, where", x => x.Row.Place)
        .Text("tool", $"with what the length over links was measured", x => FileWords.Of(x.Row.Tool))
        .Number("one_link_mm", $"inner length of one link", x => x.Row.OneLinkMm)
        .Number("several_links_mm", $"length over links", x => x.Row.SeveralLinksMm)
        .Whole("links", $"over how many", x => x.Row.Links)
        .YesNo("outer_edges", $"whether that length was taken over outer edges", x => x.Row.OuterEdges)
        .Number("d1_mm", $"diameter in the crown in the direction of pull", x => x.Row.D1Mm)
        .Number("d2_mm", $"diameter in the crown at right angles to it", x => x.Row.D2Mm)
        .Text("written", $"as it was written, with its unit", x => x.Row.Written)
        .Whole("corrects_id", $"the measures that these correct", x => x.Row.CorrectsId)
        .YesNo("withdraws", $"whether they withdraw those", x => x.Row.Withdraws)
        .Text("note", $"why they were withdrawn", x => x.Row.Note)
        .Text("told_by", $"person or program", x => x.Row.ToldBy)
        .Moment("received_at", $"when it arrived", x => x.Row.ReceivedAt)
        .Table("link_measures", $"Measures of a round-link chain's links as they were recorded.", databases,
            (db, after) => from measure in db.LinkMeasures.AsNoTracking()
                           where measure.Id > after
                           join chain in db.Chains on measure.ChainId equals chain.Id
                           orderby measure.Id
                           select new OfChain<LinkMeasureRow>(measure, chain.Name));
}
