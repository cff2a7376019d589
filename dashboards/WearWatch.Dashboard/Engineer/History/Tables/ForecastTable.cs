using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Storage;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Engineer.History.Tables;

/// <summary>All forecasts that were ever made.</summary>
internal static class ForecastTable
{
    private static readonly int[] percents = [5, 25, 50, 75, 95];

    public static HistoryTable Of(IDbContextFactory<WearDb> databases) => percents
        .Aggregate(Before(), (shape, p) => shape.Number(
            $"remaining_h_p{p:00}", $"hours left from the last reading at {p} %; empty beyond the horizon",
            x => x.Row.ToForecast().Quantile(p)))
        .Number("early_exponent", $"spread of its early side; 1 as made", x => x.Row.EarlyExponent)
        .Number("late_exponent", $"spread of its late side", x => x.Row.LateExponent)
        .Text("limited_by", $"what reaches its limit first and gives the dates; empty for the length",
            x => x.Row.Sooner?.Cause.ToString() ?? "")
        .Moment("early_date", $"the planner's date", x => x.Row.EarlyDate)
        .Moment("middle_date", $"the middle date", x => x.Row.MiddleDate)
        .Text("condition", Phrase.Verbatim(string.Join(", ", ConditionWords.All.Select(w => w.Wire))),
            x => ConditionWords.Of(x.Row.Condition, x.HoldsLoad).Wire)
        .Moment("out_of_use_by", $"of a chain that lifts: out of use from then on", x => x.Row.OutOfUseBy)
        .Text("caution", $"what no figure says of a chain that lifts", x => x.HoldsLoad ? Caution.LiftingInBrief.ToString() : "")
        .Table("forecasts", $"A forecast as it was made; nothing is ever changed in it.", databases,
            (db, after) => from forecast in db.Forecasts.AsNoTracking()
                           where forecast.Id > after
                           join chain in db.Chains on forecast.ChainId equals chain.Id
                           orderby forecast.Id
                           select new OfChain<ForecastRow>(
                               forecast, chain.Name, chain.Family.Lifts(chain.Lifts, chain.NotLiftingReason != "")));

    private static HistoryShape<OfChain<ForecastRow>> Before() => OfChain.Shape<ForecastRow>(f => f.Id)
        .Moment("made_at", $"when", x => x.Row.MadeAt)
        .YesNo("is_latest", $"whether it is the chain's newest", x => x.Row.IsLatest)
        .Text("model", $"the knowledge that it rests on", x => x.Row.ModelVersion)
        .Whole("life", $"which of the position's fitted chains, from 0", x => x.Row.Life)
        .Whole("readings", $"readings used", x => x.Row.ReadingsUsed)
        .Number("last_reading_h", $"running hours since fitting at the last reading", x => x.Row.HoursAtLastReading)
        .Number("now_h", $"and when it was made", x => x.Row.HoursNow)
        .Number("elongation_pct", $"steady elongation by the wear history, the rest of the run-in counted as done",
            x => x.Row.ElongationPct)
        .Number("rate_pct_per_1000h", $"wear rate", x => x.Row.RatePctPer1000H)
        .Number("limit_pct", $"the limit", x => x.Row.LimitPct);
}
