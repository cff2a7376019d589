using Microsoft.EntityFrameworkCore;
using WearWatch.Storage.Rows;

namespace WearWatch.Storage;

/// <summary>
/// Of all that was told of a chain, what stands: the newest correction of each reading or event, in the order taken.
/// </summary>
public static class StandingRows
{
    /// <summary>
    /// The readings of a chain that count: corrections applied, withdrawn and waiting ones out, in the order taken.
    /// </summary>
    public static async Task<IReadOnlyList<ReadingRow>> StandingReadingsAsync(
        this WearDb db, int chainId, CancellationToken ct = default) =>
        Standing(await db.Readings.AsNoTracking().Where(r => r.ChainId == chainId).OrderBy(r => r.Id).ToListAsync(ct));

    /// <summary>
    /// The events of a chain that count: corrections applied, withdrawn ones out, in the order in which they happened.
    /// </summary>
    public static async Task<IReadOnlyList<EventRow>> StandingEventsAsync(
        this WearDb db, int chainId, CancellationToken ct = default) =>
        Standing(await db.Events.AsNoTracking().Where(e => e.ChainId == chainId).OrderBy(e => e.Id).ToListAsync(ct));

    /// <summary>What stands of one chain's reading rows, which come by ascending id.</summary>
    public static IReadOnlyList<ReadingRow> Standing(IReadOnlyList<ReadingRow> byId) =>
        [.. InOrder(Newest(byId, r => r.Id, r => r.CorrectsId).Where(r => !r.Withdraws && r.Standing == ReadingStanding.Accepted),
            r => r.TakenAt)];

    /// <summary>What stands of one chain's event rows, which come by ascending id.</summary>
    public static IReadOnlyList<EventRow> Standing(IReadOnlyList<EventRow> byId) =>
        [.. InOrder(Newest(byId, e => e.Id, e => e.CorrectsId).Where(e => !e.Withdraws), e => e.At)];

    /// <summary>What stands of one chain's examination rows, which come by ascending id; by their days.</summary>
    public static IReadOnlyList<ExaminationRow> Standing(IReadOnlyList<ExaminationRow> byId) =>
        [.. Newest(byId, e => e.Id, e => e.CorrectsId).Where(e => !e.Withdraws).OrderBy(e => e.On).ThenBy(e => e.Id)];

    /// <summary>What stands of one chain's rows of link measures, which come by ascending id.</summary>
    public static IReadOnlyList<LinkMeasureRow> Standing(IReadOnlyList<LinkMeasureRow> byId) =>
        [.. InOrder(Newest(byId, m => m.Id, m => m.CorrectsId).Where(m => !m.Withdraws), m => m.TakenAt)];

    /// <summary>What stands of one chain's rows of parts, which come by ascending id.</summary>
    public static IReadOnlyList<PartReadingRow> Standing(IReadOnlyList<PartReadingRow> byId) =>
        [.. InOrder(Newest(byId, p => p.Id, p => p.CorrectsId).Where(p => !p.Withdraws), p => p.TakenAt)];

    /// <summary>The reading rows that wait for a person's word: not accepted, not corrected, not withdrawn.</summary>
    public static IReadOnlyList<ReadingRow> Waiting(IReadOnlyList<ReadingRow> byId) =>
        [.. Newest(byId, r => r.Id, r => r.CorrectsId).Where(r => !r.Withdraws && r.Standing == ReadingStanding.Waiting)];

    /// <summary>The newest row of each chain of corrections, at the place of its first row.</summary>
    private static List<T> Newest<T>(IReadOnlyList<T> byId, Func<T, long> id, Func<T, long?> corrects)
    {
        var first = new Dictionary<long, long>();
        var newest = new SortedDictionary<long, T>();
        foreach (var row in byId)
        {
            var root = corrects(row) is { } corrected ? first.GetValueOrDefault(corrected, corrected) : id(row);
            first[id(row)] = root;
            newest[root] = row;
        }

        return [.. newest.Values];
    }

    /// <summary>Order of arrival, except that a row with an earlier date goes before those with a later one.</summary>
    /// <remarks>A row without a date stays behind the row after which it arrived.</remarks>
    private static IEnumerable<T> InOrder<T>(IEnumerable<T> arrived, Func<T, DateTimeOffset?> date)
    {
        var last = DateTimeOffset.MinValue;
        return arrived.Select(row => (Row: row, When: last = date(row) ?? last)).ToList().OrderBy(r => r.When).Select(r => r.Row);
    }
}
