using System.Security.Cryptography;
using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Files;
using WearWatch.Plant.People;
using WearWatch.Plant.Settings;
using WearWatch.Plant.Tracking;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Intake;

/// <summary>Takes in files of chains, readings, events, measures and work orders; the same file twice changes nothing.</summary>
/// <remarks>
/// The register goes first, then events, since a recorded reset explains why a counter falls, then readings; an event that can be
/// asked about waits for the readings before it (<see cref="HeldEvents"/>).
/// </remarks>
public sealed class FileImport(
    IDbContextFactory<WearDb> database, PlantSettings plant, FleetModels models, ChainReview review, ColumnNames names,
    SecurityLog log, TimeProvider clock)
        : IDisposable
{
    /// <summary>Rows in one transaction: enough to be fast, few enough that other writers wait for less than a second.</summary>
    private const int RowsAtOnce = 4_000;

    private readonly SemaphoreSlim oneAtATime = new(1);

    /// <summary>How a file is read, by itself, by what is remembered of its columns and by what a person says.</summary>
    public async Task<FileLook> LookAsync(ImportFile file, CancellationToken ct = default) =>
        FileLook.Of(await names.RecallAsync(Workbook.AsText(file), ct));

    /// <summary>Tells what an import would do; nothing is stored.</summary>
    public async Task<ImportReport> PreviewAsync(
        IReadOnlyList<ImportFile> files, IProgress<ImportProgress>? progress = null, CancellationToken ct = default)
    {
        var run = new ImportRun(database, Stores: false, clock.GetUtcNow(), await plant.CalendarAsync(ct),
            await models.CurrentAsync(ct));
        return await Task.Run(() => GoThroughAsync(run, files, progress, ct), ct);
    }

    /// <summary>Takes the files in and assesses the chains concerned.</summary>
    public async Task<ImportReport> ImportAsync(
        IReadOnlyList<ImportFile> files, IProgress<ImportProgress>? progress = null, CancellationToken ct = default)
    {
        await oneAtATime.WaitAsync(ct);
        try
        {
            var run = new ImportRun(database, Stores: true, clock.GetUtcNow(), await plant.CalendarAsync(ct),
                await models.CurrentAsync(ct));
            // Reading rows is work for a processor; a page that waits for it must not stand still.
            var report = await Task.Run(() => GoThroughAsync(run, files, progress, ct), ct);
            if (run.Changed.Count == 0) return report;
            var isFirstModel = await models.CurrentAsync(ct) is null && await models.TrainAsync(ct);
            await review.ReviewAsync(isFirstModel ? null : run.Changed, null, ct);
            return report;
        }
        finally
        {
            oneAtATime.Release();
        }
    }

    /// <inheritdoc/>
    public void Dispose() => oneAtATime.Dispose();

    private async Task<ImportReport> GoThroughAsync(
        ImportRun run, IReadOnlyList<ImportFile> files, IProgress<ImportProgress>? progress, CancellationToken ct)
    {
        await run.LoadRegisterAsync(ct);
        var zone = run.Calendar.TimeZone;
        var reports = new List<FileReport>();
        var texts = new List<(ImportFile File, ImportFile Text, PlantFile Rows)>();
        foreach (var file in files)
        {
            var text = await names.RecallAsync(Workbook.AsText(file), ct);
            texts.Add((file, text, new PlantFile(text, zone)));
        }

        var taken = new List<(ImportFile File, ImportFile Text, FileKind Kind, RemarkList Remarks)>();
        foreach (var (file, text, rows) in texts.OrderBy(t => Turn(t.Rows.Kind)))
            taken.Add((file, text, rows.Kind, await TakeAsync(run, text, rows, progress, ct)));
        run.Events.HappenToTheEnd();
        await AtOnceAsync(run, db => run.Events.SaveAsync(db, ct), ct);
        foreach (var (file, text, kind, remarks) in taken)
        {
            var report = remarks.Report(kind);
            reports.Add(report = report with { RefusedRows = RefusedRows.Of(text, report) });
            if (!run.Stores) continue;
            await RecordAsync(file, report, run.Now, ct);
            await names.RememberAsync(report.Kind, file.Choice, ct);
        }

        return new ImportReport(reports);
    }

    private static int Turn(FileKind kind) =>
        kind switch { FileKind.Chains => 0, FileKind.Events => 1, FileKind.Readings => 2, FileKind.LinkMeasures => 3, _ => 4 };

    private async Task<RemarkList> TakeAsync(
        ImportRun run, ImportFile file, PlantFile text, IProgress<ImportProgress>? progress, CancellationToken ct)
    {
        var remarks = new RemarkList(file.Name);
        var readings = new ReadingsTaking(run, remarks, file);
        Func<WearDb, IReadOnlyList<FileItem>, CancellationToken, Task> take = text.Kind switch
        {
            FileKind.Chains => new ChainsTaking(run, remarks, file).TakeAsync,
            FileKind.Events => new EventsTaking(run, remarks, file).TakeAsync,
            FileKind.LinkMeasures => new LinkMeasuresTaking(run, remarks, file).TakeAsync,
            FileKind.PartReadings => new PartReadingsTaking(run, remarks, file).TakeAsync,
            FileKind.WorkOrders => new WorkOrdersTaking(run, remarks, file).TakeAsync,
            _ => readings.TakeAsync,
        };
        var share = new ReadShare(file);
        var rows = 0;
        foreach (var items in text.Rows(run.Cards, share.At).Chunk(RowsAtOnce))
        {
            ct.ThrowIfCancellationRequested();
            foreach (var item in items) remarks.Add(item);
            await AtOnceAsync(run, db => take(db, items, ct), ct);
            progress?.Report(new ImportProgress(file.Name, rows += items.Length, share.Value));
        }

        await AtOnceAsync(run, db => readings.FinishAsync(db, ct), ct);
        return remarks;
    }

    /// <summary>
    /// In a write transaction from the start: nobody else can add a row between the look for known ones and the save.
    /// </summary>
    private async Task AtOnceAsync(ImportRun run, Func<WearDb, Task> take, CancellationToken ct)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        await using var transaction = run.Stores ? await db.Database.BeginTransactionAsync(ct) : null;
        await take(db);
        if (transaction is not null) await transaction.CommitAsync(ct);
    }

    /// <summary>Keeps what became of a file, unless it is one that was taken in before and had nothing new.</summary>
    private async Task RecordAsync(ImportFile file, FileReport report, DateTimeOffset now, CancellationToken ct)
    {
        await using var stream = file.Open();
        var sha256 = Convert.ToHexStringLower(await SHA256.HashDataAsync(stream, ct));
        await using var db = await database.CreateDbContextAsync(ct);
        if (report.Taken + report.Waiting == 0 && await db.Imports.AnyAsync(i => i.Sha256 == sha256, ct)) return;
        db.Imports.Add(new ImportRow
        {
            FileName = file.Name,
            Sha256 = sha256,
            ToldBy = file.By,
            ReceivedAt = now,
            Taken = report.Taken,
            AlreadyKnown = report.AlreadyKnown,
            Waiting = report.Waiting,
            Refused = report.Refused,
            Report = Phrase.Join("\n", report.Remarks.Select(r => r.InFull)),
            RefusedRows = report.RefusedRows?.ToKept() ?? "",
        });
        await db.SaveChangesAsync(ct);
        await log.AddAsync(SecurityEventKind.Imported, file.Name, file.By, ct);
    }
}
