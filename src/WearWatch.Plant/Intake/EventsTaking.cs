using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Plant.Files;
using WearWatch.Plant.Settings;
using WearWatch.Storage;

namespace WearWatch.Plant.Intake;

/// <summary>Takes events of a file in.</summary>
internal sealed class EventsTaking(ImportRun run, RemarkList remarks, ImportFile file)
{
    public async Task TakeAsync(WearDb db, IReadOnlyList<FileItem> items, CancellationToken ct)
    {
        var happened = items.OfType<FileItem.Happened>()
            .Select(item => (item.Line, item.Event, Fingerprint: Fingerprint.Of(item.Event))).ToList();
        var fingerprints = happened.Select(h => h.Fingerprint).ToList();
        var known = await db.Events.Where(e => EF.Parameter(fingerprints).Contains(e.Fingerprint)).Select(e => e.Fingerprint)
            .ToHashSetAsync(ct);
        await run.MeetAsync(db, happened.Select(h => h.Event.Chain), ct);
        foreach (var (line, happening, fingerprint) in happened)
        {
            if (!run.Cards.TryGetValue(happening.Chain, out var card))
            {
                ImportRun.RefuseUnknown(remarks, line, happening.Chain);
                continue;
            }

            if (Clocks.FaultOf(happening.At, run.Now) is { } time)
            {
                remarks.Add(line, "taken_at", time, RemarkKind.Refused);
                continue;
            }

            if (EventFacts.FaultsAt(happening, card).ToList() is [var (field, reason), ..])
            {
                remarks.Add(line, field, reason, RemarkKind.Refused);
                continue;
            }

            var isStored = known.Contains(fingerprint) || run.Events.Knows(fingerprint);
            if (remarks.IsRepeated(fingerprint, line, isStored)) continue;
            run.Events.Take(new FileEvent(line, happening, fingerprint, remarks, file.Maker(line)));
        }

        await run.Events.SaveAsync(db, ct);
    }
}
