
using WearWatch.Plant.Books;
using WearWatch.Plant.Tracking;

namespace WearWatch.Dashboard.Engineer.Record;

/// <summary>Asks how forecasts turned out.</summary>
public sealed class RecordQuery(LifeBook book, KeptForecasts kept, RemadeForecasts remade, Calibrations calibrations)
{
    public bool IsQuick => book.IsOpen;

    public async Task<RecordView> AskAsync(RecordFilter filter, CancellationToken ct)
    {
        var (forecasts, progress) = await LookAsync(filter.Remade, ct);
        return RecordView.Of(forecasts, filter, progress) with
        {
            Taught = TaughtWear.Of((await calibrations.KnowledgeAsync(ct)).Constants),
        };
    }

    /// <summary>The scored forecasts themselves; of those made again, what there is so far.</summary>
    public async Task<IReadOnlyList<RecordedForecast>> ForecastsAsync(bool madeAgain, CancellationToken ct) =>
        (await LookAsync(madeAgain, ct)).Forecasts;

    private async Task<(IReadOnlyList<RecordedForecast> Forecasts, (int Done, int Of)? Progress)> LookAsync(
        bool madeAgain, CancellationToken ct)
    {
        var fleet = await book.ReadAsync(ct);
        if (!madeAgain) return (await kept.ReadAsync(fleet, ct), null);
        _ = remade.Begin(fleet);
        var progress = remade.Progress; // before the forecasts: when nothing is being made any more, they are whole
        return (remade.Latest, progress);
    }
}
