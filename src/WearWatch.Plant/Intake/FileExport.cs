using CsvHelper;
using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Plant.Files;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Intake;

/// <summary>Writes the register, the readings and the events that stand, in the formats that are imported.</summary>
public sealed class FileExport(IDbContextFactory<WearDb> database)
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
        using var readings = Open(Path.Combine(folder, "readings.csv"), FileColumns.Readings.All);
        var columns = FileColumns.Events.All.Except(await UntoldAsync(db, ct)).ToList();
        using var events = Open(Path.Combine(folder, "events.csv"), columns);
        foreach (var ids in (await db.Chains.OrderBy(c => c.Id).Select(c => c.Id).ToListAsync(ct)).Chunk(ChainsAtOnce))
        {
            foreach (var chain in await RawChain.LoadAsync(db, ids, ct))
            {
                foreach (var row in chain.ReadingRows) Write(readings, chain.Card.Name, row);
                foreach (var row in chain.EventRows) Write(events, chain.Card.Name, row, columns);
                (readingCount, eventCount) = (readingCount + chain.ReadingRows.Count, eventCount + chain.EventRows.Count);
            }
        }

        return (cards.Count, readingCount, eventCount);
    }

    private static CsvWriter Open(string path, IEnumerable<string> header)
    {
        var writer = CsvWriter.Create(File.Create(path), new CsvWriterOptions { NewLine = "\n" });
        writer.WriteRecord([.. header]);
        return writer;
    }

    private static void WriteChains(string path, IReadOnlyList<ChainCard> cards)
    {
        var columns = ChainColumns.All.Where(c => c.Always || cards.Any(card => c.Write(card).Length > 0)).ToList();
        using var writer = Open(path, ["chain", .. columns.Select(c => c.Name)]);
        foreach (var card in cards) writer.WriteRecord([card.Name, .. columns.Select(c => c.Write(card))]);
    }

    private static void Write(CsvWriter writer, string chain, ReadingRow row)
    {
        var (length, unit) = LengthAsWritten(row);
        writer.WriteRecord([
            chain, RowFields.Text(row.TakenAt), RowFields.Text(row.CounterH), FileWords.Of(row.Tool), row.Place,
            RowFields.Text(row.Pitches), length, unit, RowFields.Text(row.TemperatureC), RowFields.Text(row.Strand),
            row.Taut ? "yes" : "", RowFields.Text(row.LoadN)]);
    }

    /// <summary>The length as it was told, where a file may hold it so; else in millimetres.</summary>
    private static (string Length, string Unit) LengthAsWritten(ReadingRow row)
    {
        var cut = row.LengthAsTold.LastIndexOf(' ');
        var (length, unit) = cut < 0 ? ("", "") : (row.LengthAsTold[..cut], row.LengthAsTold[(cut + 1)..]);
        return ReadingText.LengthMm(length, unit) is { } mm && mm.Equals(row.LengthMm) ? (length, unit) : (RowFields.Text(row.LengthMm), "mm");
    }

    /// <summary>Columns of events.csv that no event fills.</summary>
    private static async Task<IReadOnlyList<string>> UntoldAsync(WearDb db, CancellationToken ct)
    {
        var lots = await db.Events.AnyAsync(e => e.Lot != "", ct);
        var oil = await db.Events.AnyAsync(e => e.OilMethod != null || e.OilGrade != "" || e.OilAmountMl != null, ct);
        return [.. lots ? [] : new[] { "lot" }, .. oil ? [] : FileColumns.Oil];
    }

    private static void Write(CsvWriter writer, string chain, EventRow row, IReadOnlyCollection<string> columns)
    {
        string[] lot = columns.Contains("lot") ? [row.Lot] : [];
        string[] oil = columns.Contains(FileColumns.Oil[0])
            ? [row.OilMethod is { } method ? FileWords.Of(method) : "", row.OilGrade, RowFields.Text(row.OilAmountMl)]
            : [];
        writer.WriteRecord([
            chain, FileWords.Of(row.Kind), RowFields.Text(row.At), RowFields.Text(row.CounterBeforeH), RowFields.Text(row.CounterAfterH),
            .. lot, .. oil]);
    }
}
