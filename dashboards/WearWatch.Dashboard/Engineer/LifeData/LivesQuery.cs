using System.Collections.Concurrent;
using WearWatch.Plant.Books;

namespace WearWatch.Dashboard.Engineer.LifeData;

/// <summary>Asks the book of lives; what was worked out is kept until a life changes.</summary>
public sealed class LivesQuery(LifeBook book)
{
    private readonly ConcurrentDictionary<LivesFilter, (int Version, LivesView View)> kept = new();

    /// <summary>Whether an answer is quick; the first one after the start reads every chain.</summary>
    public bool IsQuick => book.IsOpen;

    public async Task<LivesView> AskAsync(LivesFilter filter, CancellationToken ct)
    {
        var fleet = await book.ReadAsync(ct);
        if (kept.TryGetValue(filter, out var before) && before.Version == fleet.Version) return before.View;
        var view = await Task.Run(() => LivesView.Of(fleet, filter), ct);
        if (kept.Count > 100) kept.Clear(); // a person draws a few; a crawler through all filters must not fill the memory
        kept[filter] = (fleet.Version, view);
        return view;
    }
}
