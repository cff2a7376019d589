using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Entries;
using WearWatch.Plant.Files;
using WearWatch.Plant.Settings;
using WearWatch.Storage;
using WearWatch.Storage.Engines;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Intake;

/// <summary>Takes events of a file in.</summary>
internal sealed class EventsTaking(ImportRun run, RemarkList remarks, string file)
{
    public async Task TakeAsync(WearDb db, IReadOnlyList<FileItem> items, CancellationToken ct)
    {
        var happened = items.OfType<FileItem.Happened>()
            .Select(item => (item.Line, item.Event, Fingerprint: Fingerprint.Of(item.Event))).ToList();
        var fingerprints = happened.Select(h => h.Fingerprint).ToList();
        var known = await db.Events.Where(e => EF.Parameter(fingerprints).Contains(e.Fingerprint)).Select(e => e.Fingerprint)
            .ToHashSetAsync(ct);
        await run.MeetAsync(db, happened.Select(h => h.Event.Chain), ct);
        var rows = new List<EventRow>();
        foreach (var (line, happening, fingerprint) in happened)
        {
            if (!run.Cards.TryGetValue(happening.Chain, out var card))
            {
                ImportRun.RefuseUnknown(remarks, line, happening.Chain);
                continue;
            }

            if (happening.At > run.Now + Clocks.Ahead)
            {
                remarks.Add(line, "taken_at", "The time lies in the future.", RemarkKind.Refused);
                continue;
            }

            if (EventFacts.FaultsAt(happening, card).ToList() is [var (field, reason), ..])
            {
                remarks.Add(line, field, reason, RemarkKind.Refused);
                continue;
            }

            if (remarks.IsRepeated(fingerprint, line, isStored: known.Contains(fingerprint))) continue;
            var so = run.SoFar[happening.Chain];
            if (so.CounterDoubt(happening, run.Calendar, run.OnTheLineOf(card)) is { } doubt)
            {
                if (doubt.Accounts is not [{ Kind: SlipKind.CounterReset }, ..])
                {
                    remarks.Add(line, "counter_h_before", $"{doubt.Question} Correct the row and import the file again.",
                        RemarkKind.Refused);
                    continue;
                }

                remarks.Add(line, "counter_h_before",
                    $"{doubt.Expected.Words} Taken as a counter that was set back without record.", RemarkKind.Warning);
                so.AddSetBack(happening);
            }
            else
            {
                so.Add(happening);
            }

            remarks.Taken++;
            if (!run.Stores) continue;
            var id = run.Ids[happening.Chain];
            rows.Add(EntryRows.Row(id, happening, fingerprint, FormattableString.Invariant($"{file}:{line}"), run.Now));
            run.Changed.Add(id);
        }

        if (run.Stores) await db.AddManyAsync(rows, ct);
    }
}
