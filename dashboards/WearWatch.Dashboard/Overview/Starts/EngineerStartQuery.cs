using System.Globalization;
using WearWatch.Dashboard.Engineer;
using WearWatch.Dashboard.Engineer.Changes;
using WearWatch.Dashboard.Engineer.Record;
using WearWatch.Plant.Books;
using WearWatch.Plant.Costs;

namespace WearWatch.Dashboard.Overview.Starts;

/// <summary>What an engineer sees first: what changed, which class costs most, and which forecasts failed.</summary>
public sealed class EngineerStartQuery(ChangesQuery changes, CostQuery costs, RecordQuery record)
{
    private const double HalfOfLife = 0.5;

    public async Task<StartView> AskAsync(CancellationToken ct)
    {
        var alarms = await changes.AskAsync(ct);
        var (open, judged) = (alarms.Rows.Count(r => r.EndedAt is null), alarms.Rows.Count(r => r.JudgedReal is null));
        var classes = await costs.AskAsync(card => LifeGrouping.Type.Of(card), ct);
        var forecasts = (await record.ForecastsAsync(madeAgain: false, ct)).Where(f => f.AtShare == HalfOfLife).ToArray();
        return new StartView(
            [
                new(
                    $"{open}", Phrase.Counted(open, $"chain wears faster than before", $"chains wear faster than before"),
                    "/engineering/changes")
                {
                    Under = Phrase.Counted(judged, $"{judged} alarm to judge", $"{judged} alarms to judge"),
                    Urgent = judged > 0,
                },
                Dearest(classes),
                Failed(forecasts),
            ], alarms.Time);
    }

    private static StartFact Dearest(FleetCosts costs)
    {
        if (costs.Groups.FirstOrDefault(g => g.Year.PerThousandHours is > 0) is not { Group: { } name } dearest)
            return new("–", $"no class has costs yet", "/engineering/costs?by=type");
        var each = dearest.Year.PerThousandHours!.Value;
        return new(name, $"costs most for an hour of running", "/engineering/costs?by=type")
        {
            Under = Phrase.Counted(
                dearest.Year.Swaps, $"{each:#,0} {costs.Terms.Costs.Money} in 1,000 h, from {dearest.Year.Swaps} swap",
                $"{each:#,0} {costs.Terms.Costs.Money} in 1,000 h, from {dearest.Year.Swaps} swaps"),
        };
    }

    private static StartFact Failed(RecordedForecast[] forecasts)
    {
        var failed = forecasts.Count(f => f.Score.EndedBeforeInterval);
        return new(failed.ToString(CultureInfo.CurrentCulture),
            Phrase.Counted(
                failed, $"forecast at half of life that failed: the limit came before the early date",
                $"forecasts at half of life that failed: the limit came before the early date"), "/engineering/record?at=50")
        {
            Under = $"of {forecasts.Length}; 1 of 20 is to be expected",
            Urgent = forecasts.Length >= 20 && failed > forecasts.Length / 10,
        };
    }
}
