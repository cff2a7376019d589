using Microsoft.EntityFrameworkCore;
using WearWatch.Chains.Parts;
using WearWatch.Parts;
using WearWatch.Plant.Files;
using WearWatch.Storage;
using WearWatch.Storage.Engines;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Intake;

/// <summary>Takes readings of parts of a file in: checked as those that are typed, and refused with the same reasons.</summary>
internal sealed class PartReadingsTaking(ImportRun run, RemarkList remarks, ImportFile file)
{
    /// <summary>What rows before told of parts: a size when new holds for the rows after it.</summary>
    private readonly Dictionary<(string Chain, WearPart Part), PartTold> told = [];

    public async Task TakeAsync(WearDb db, IReadOnlyList<FileItem> items, CancellationToken ct)
    {
        var entries = items.OfType<FileItem.PartMeasured>().Select(item => (item.Line, Entry: EntryOf(item))).ToList();
        var keys = entries.Select(t => t.Entry.Key).ToList();
        var known = await db.PartReadings.Where(p => p.KeyOwner == KeyOwner.Program && EF.Parameter(keys).Contains(p.Key))
            .Select(p => p.Key).ToHashSetAsync(ct);
        var before = await KeptAsync(db, [.. entries.Select(t => t.Entry.Told.Chain)], ct);
        var rows = new List<PartReadingRow>();
        foreach (var (line, entry) in entries)
        {
            var chain = entry.Told.Chain;
            if (!run.Cards.TryGetValue(chain, out var card))
            {
                ImportRun.RefuseUnknown(remarks, line, chain);
                continue;
            }

            PartTold Before(WearPart part) => told.TryGetValue((chain, part), out var here) ? here
                : before.GetValueOrDefault((chain, part), PartTold.Nothing);
            if (PartEntryCheck.Read(entry, card, Before, run.Now, out var faults) is not { } reading)
            {
                foreach (var fault in faults.Take(1)) remarks.Add(line, fault.Field, fault.Reason, RemarkKind.Refused);
                continue;
            }

            var earlier = Before(reading.Part);
            told[(chain, reading.Part)] = earlier with { NewMm = reading.Told.NewMm ?? earlier.NewMm };
            if (remarks.IsRepeated(entry.Key, line, isStored: known.Contains(entry.Key))) continue;
            remarks.Taken++;
            if (!run.Stores) continue;
            var id = run.Ids[chain];
            rows.Add(EntryRows.Row(id, reading, entry, run.Now));
            run.Changed.Add(id);
        }

        if (run.Stores) await db.AddManyAsync(rows, ct);
    }

    private static async Task<Dictionary<(string Chain, WearPart Part), PartTold>> KeptAsync(
        WearDb db, IReadOnlyList<string> chains, CancellationToken ct)
    {
        var rows = await (
            from part in db.PartReadings.AsNoTracking()
            join chain in db.Chains on part.ChainId equals chain.Id
            where EF.Parameter(chains).Contains(chain.Name)
            orderby part.Id
            select new { chain.Name, part }).ToListAsync(ct);
        return rows.GroupBy(r => (r.Name, r.part.Part)).ToDictionary(
            g => (g.Key.Name, g.Key.Part),
            g => PartTrack.ToldOf([.. StandingRows.Standing([.. g.Select(r => r.part)]).Select(p => p.ToReading())]));
    }

    private NewPartReading EntryOf(FileItem.PartMeasured item) =>
        new(item.Told, Fingerprint.Of(item.Told), file.Maker(item.Line), KeyOwner.Program);
}
