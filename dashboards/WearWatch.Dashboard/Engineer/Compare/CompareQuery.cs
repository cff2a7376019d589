using WearWatch.Dashboard.Engineer.Record;
using WearWatch.Plant.Books;
using WearWatch.Plant.Costs;
using WearWatch.Plant.Settings;

namespace WearWatch.Dashboard.Engineer.Compare;

/// <summary>Asks how two groups or periods differ.</summary>
public sealed class CompareQuery(LifeBook book, RecordQuery records, CostQuery costs, PlantClock clock)
{
    /// <summary>Whether an answer is quick; the first one after the start reads every chain.</summary>
    public bool IsQuick => book.IsOpen;

    public async Task<CompareView> AskAsync(CompareFilter filter, CancellationToken ct)
    {
        var fleet = await book.ReadAsync(ct);
        var record = await records.ForecastsAsync(madeAgain: false, ct);
        var (terms, time) = (await costs.TermsAsync(ct), await clock.NowAsync(ct));
        return await Task.Run(() => CompareView.Of(fleet, record, terms, CompareView.Opening(fleet, filter), time), ct);
    }
}
