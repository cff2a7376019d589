using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Plant.Files;
using WearWatch.Storage;
using WearWatch.Storage.Engines;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Intake;

/// <summary>Takes measures of links of a file in: checked as those that are typed, and refused with the same reasons.</summary>
internal sealed class LinkMeasuresTaking(ImportRun run, RemarkList remarks, ImportFile file)
{
    public async Task TakeAsync(WearDb db, IReadOnlyList<FileItem> items, CancellationToken ct)
    {
        var told = items.OfType<FileItem.Linked>().Select(item => (item.Line, Entry: EntryOf(item))).ToList();
        var keys = told.Select(t => t.Entry.Key).ToList();
        var known = await db.LinkMeasures.Where(m => m.KeyOwner == KeyOwner.Program && EF.Parameter(keys).Contains(m.Key))
            .Select(m => m.Key).ToHashSetAsync(ct);
        var rows = new List<LinkMeasureRow>();
        foreach (var (line, entry) in told)
        {
            if (!run.Cards.TryGetValue(entry.Chain, out var card))
            {
                ImportRun.RefuseUnknown(remarks, line, entry.Chain);
                continue;
            }

            if (LinkEntryCheck.Read(entry, card, run.Now, out var faults) is not { } measures)
            {
                foreach (var fault in faults.Take(1)) remarks.Add(line, fault.Field, fault.Reason, RemarkKind.Refused);
                continue;
            }

            if (remarks.IsRepeated(entry.Key, line, isStored: known.Contains(entry.Key))) continue;
            remarks.Taken++;
            if (!run.Stores) continue;
            var id = run.Ids[entry.Chain];
            rows.Add(EntryRows.Row(id, measures, entry, outerEdges: card.Links?.OuterEdges == true, run.Now));
            run.Changed.Add(id);
        }

        if (run.Stores) await db.AddManyAsync(rows, ct);
    }

    private NewLinkMeasures EntryOf(FileItem.Linked item)
    {
        var entry = new NewLinkMeasures
        {
            Key = "",
            KeyOwner = KeyOwner.Program,
            Chain = item.OfChain,
            TakenAt = item.TakenAt,
            CounterH = item.CounterH,
            Place = item.Place,
            Tool = item.Tool,
            OneLink = item.OneLink,
            SeveralLinks = item.SeveralLinks,
            Links = item.Links,
            D1 = item.D1,
            D2 = item.D2,
            Unit = item.Unit,
            ToldBy = file.Maker(item.Line),
        };
        return entry with { Key = Fingerprint.Of(entry) };
    }
}
