using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Files;
using WearWatch.Storage;
using WearWatch.Storage.Engines;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Intake;

/// <summary>Takes reports on work orders of a file in. They are worked off after that, as those that a program sends.</summary>
internal sealed class WorkOrdersTaking(ImportRun run, RemarkList remarks, ImportFile file)
{
    public async Task TakeAsync(WearDb db, IReadOnlyList<FileItem> items, CancellationToken ct)
    {
        var entries = items.OfType<FileItem.Ordered>().Select(item => (item.Line, Entry: EntryOf(item))).ToList();
        var keys = entries.ConvertAll(e => e.Entry.Key);
        var known = await db.WorkOrderReports
            .Where(r => r.KeyOwner == KeyOwner.Program && EF.Parameter(keys).Contains(r.Key)).Select(r => r.Key)
            .ToHashSetAsync(ct);
        var rows = new List<WorkOrderReportRow>();
        foreach (var (line, entry) in entries)
        {
            if (WorkOrderEntryCheck.Faults(entry, run.Now) is [var fault, ..])
            {
                remarks.Add(line, fault.Field, fault.Reason, RemarkKind.Refused);
                continue;
            }

            if (remarks.IsRepeated(entry.Key, line, known.Contains(entry.Key))) continue;
            remarks.Taken++;
            rows.Add(entry.ToRow(run.Now));
        }

        if (run.Stores) await db.AddManyAsync(rows, ct);
    }

    private NewWorkOrderReport EntryOf(FileItem.Ordered item) =>
        new(item.Told, Fingerprint.Of(item.Told), file.Maker(item.Line), KeyOwner.Program);
}
