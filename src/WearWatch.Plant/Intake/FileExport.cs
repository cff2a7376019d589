using CsvHelper;
using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Plant.Files;
using WearWatch.Plant.People;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Intake;

/// <summary>Writes the register, the readings and the events that stand, in the formats that are imported.</summary>
public sealed class FileExport(IDbContextFactory<WearDb> database, SecurityLog log)
{
    private const int ChainsAtOnce = 200;

    /// <summary>Writes chains.csv, readings.csv and events.csv into a folder, which is made if it is not there.</summary>
    /// <remarks>Withdrawn and waiting readings are not written; a corrected one is written as it was corrected.</remarks>
    public async Task<(int Chains, int Readings, int Events)> WriteAsync(string folder, CancellationToken ct = default)
    {
        Directory.CreateDirectory(folder);
        await using var db = await database.CreateDbContextAsync(ct);
        var cards = (await db.Chains.AsNoTracking().OrderBy(c => c.Id).ToListAsync(ct)).ConvertAll(c => c.ToCard());
        WriteChains(Path.Combine(folder, "chains.csv"), cards);

        var (readingCount, eventCount) = (0, 0);
        var allReadings = db.Readings.AsNoTracking().AsAsyncEnumerable().Select(r => r.ToReading(""));
        var allEvents = db.Events.AsNoTracking().AsAsyncEnumerable().Select(e => e.ToEvent(""));
        var ofReadings = await FilledAsync(ReadingColumns.All, allReadings, ct);
        var ofEvents = await FilledAsync(EventColumns.All, allEvents, ct);
        using var readings = Open(Path.Combine(folder, "readings.csv"), ofReadings);
        using var events = Open(Path.Combine(folder, "events.csv"), ofEvents);
        foreach (var ids in (await db.Chains.OrderBy(c => c.Id).Select(c => c.Id).ToListAsync(ct)).Chunk(ChainsAtOnce))
        {
            foreach (var chain in await RawChain.LoadAsync(db, ids, ct))
            {
                foreach (var reading in chain.Readings) Write(readings, reading.Chain, reading, ofReadings);
                foreach (var happened in chain.Events) Write(events, happened.Chain, happened, ofEvents);
                (readingCount, eventCount) = (readingCount + chain.ReadingRows.Count, eventCount + chain.EventRows.Count);
            }
        }

        await log.AddAsync(SecurityEventKind.Exported, folder, ct: ct);
        return (cards.Count, readingCount, eventCount);
    }

    private static CsvWriter Open<T>(string path, IEnumerable<FileColumn<T>> columns)
    {
        var writer = CsvWriter.Create(File.Create(path), new CsvWriterOptions { NewLine = "\n" });
        writer.WriteRecord(["chain", .. columns.Select(c => c.Name)]);
        return writer;
    }

    private static void WriteChains(string path, IReadOnlyList<ChainCard> cards)
    {
        var columns = ChainColumns.All.Where(c => c.Always || cards.Any(card => c.Write(card).Length > 0)).ToList();
        using var writer = Open(path, columns);
        foreach (var card in cards) Write(writer, card.Name, card, columns);
    }

    private static void Write<T>(CsvWriter writer, string chain, T thing, IReadOnlyCollection<FileColumn<T>> columns) =>
        writer.WriteRecord([chain, .. columns.Select(c => c.Write(thing))]);

    /// <summary>The columns without those that nothing fills.</summary>
    private static async Task<IReadOnlyList<FileColumn<T>>> FilledAsync<T>(
        IReadOnlyList<FileColumn<T>> all, IAsyncEnumerable<T> things, CancellationToken ct)
    {
        var empty = all.Where(c => !c.Always).ToList();
        await foreach (var thing in things.WithCancellation(ct))
        {
            if (empty.Count == 0) break;
            empty.RemoveAll(c => c.Write(thing).Length > 0);
        }

        return [.. all.Except(empty)];
    }
}
