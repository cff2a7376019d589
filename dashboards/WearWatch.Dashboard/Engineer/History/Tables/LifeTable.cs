
using WearWatch.Plant.Books;
using WearWatch.Plant.Files;

namespace WearWatch.Dashboard.Engineer.History.Tables;

/// <summary>The lives of all fitted chains.</summary>
internal static class LifeTable
{
    public static HistoryTable Of(LifeBook book) => new HistoryShape<(BookedChain Chain, BookedLife Life, long Number)>()
        .Whole("id", $"number of the row in this answer", x => x.Number)
        .Text("chain", OfChain.ChainMeaning, x => x.Chain.Card.Name)
        .Text("line", $"production line", x => x.Chain.Card.Line)
        .Whole("life", $"which of the position's fitted chains, from 0", x => x.Life.Number)
        .Text("lot", $"supplier's lot", x => x.Life.Lot)
        .Moment("fitted_at", $"when it was fitted", x => x.Life.FittedAt)
        .Moment("ended_at", $"when it was taken off, or read last", x => x.Life.EndedAt)
        .Number("life_h", $"running hours to the limit, or as far as known", x => x.Life.Life.Hours)
        .Text("ended", $"reached_limit, replaced_before, still_running", x => FileWords.Of(x.Life.Life.End))
        .Number("run_h", $"all hours that it ran", x => x.Life.HoursRun)
        .Number("limit_pct", $"the limit", x => x.Chain.LimitPercent)
        .Number("last_pct", $"last elongation read", x => x.Life.LastPercent)
        .YesNo("fitting_known", $"whether its hours count from its fitting", x => x.Life.FittingKnown)
        .YesNo("broke", $"whether it broke while it ran", x => x.Life.Broke)
        .Number("from_wear_h", $"running hours to the limit, by its wear where it was not reached",
            x => x.Life.Life.Failed ? x.Life.Life.Hours : x.Life.Life.Hours + x.Life.Life.Ahead?.MiddleHours)
        .Table("lives",
            $"A fitted chain from fitting to its limit, or as far as it is known; worked out anew from all that was recorded.",
            async (after, take, ct) =>
            [
                .. (await book.ReadAsync(ct)).Chains.SelectMany(c => c.Lives.Select(l => (Chain: c, Life: l)))
                    .Select((x, i) => (x.Chain, x.Life, Number: i + 1L))
                    .SkipWhile(x => x.Number <= after).Take(take)
            ]);
}
