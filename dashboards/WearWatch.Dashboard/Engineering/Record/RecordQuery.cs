using WearWatch.Worker.Books;

namespace WearWatch.Dashboard.Engineering.Record;

/// <summary>Asks how forecasts turned out.</summary>
public sealed class RecordQuery(LifeBook book, KeptRecord kept, RemadeRecord remade)
{
    public bool IsQuick => book.IsOpen;

    public async Task<RecordView> AskAsync(RecordFilter filter, CancellationToken ct) =>
        RecordView.Of(await ForecastsAsync(filter.Remade, ct), filter, filter.Remade ? remade.Progress : null);

    /// <summary>The scored forecasts themselves; of those made again, what there is so far.</summary>
    public async Task<IReadOnlyList<RecordedForecast>> ForecastsAsync(bool madeAgain, CancellationToken ct)
    {
        var fleet = await book.ReadAsync(ct);
        if (!madeAgain) return await kept.ReadAsync(fleet, ct);
        _ = remade.Begin(fleet);
        return remade.Latest;
    }
}
