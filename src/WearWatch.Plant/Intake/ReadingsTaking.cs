using Microsoft.EntityFrameworkCore;
using WearWatch.Entries;
using WearWatch.Gauging;
using WearWatch.Plant.Files;
using WearWatch.Storage;
using WearWatch.Storage.Engines;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Intake;

/// <summary>Takes readings of a file in.</summary>
internal sealed class ReadingsTaking(ImportRun run, RemarkList remarks, string file)
{
    public async Task TakeAsync(WearDb db, IReadOnlyList<FileItem> items, CancellationToken ct)
    {
        var measured = items.OfType<FileItem.Measured>().Select(item => (Item: item, Fingerprint: Fingerprint.Of(item.Reading)))
            .ToList();
        var fingerprints = measured.Select(m => m.Fingerprint).ToList();
        var known = await db.Readings.Where(r => EF.Parameter(fingerprints).Contains(r.Fingerprint)).Select(r => r.Fingerprint)
            .ToHashSetAsync(ct);
        await run.MeetAsync(db, measured.Select(m => m.Item.Reading.Chain), ct);
        var rows = new List<ReadingRow>();
        foreach (var (item, fingerprint) in measured)
        {
            if (!run.SoFar.TryGetValue(item.Reading.Chain, out var so))
                ImportRun.RefuseUnknown(remarks, item.Line, item.Reading.Chain);
            else if (remarks.IsRepeated(fingerprint, item.Line, isStored: known.Contains(fingerprint)))
                so.Add(item.Reading);
            else
                Take(rows, item, fingerprint, so);
        }

        if (run.Stores) await db.AddManyAsync(rows, ct);
    }

    private void Take(List<ReadingRow> rows, FileItem.Measured item, string fingerprint, ChainSoFar so)
    {
        var judgement = Judge(item.Reading, so);
        remarks.Add(item.Line, judgement);
        if (judgement is Judgement.Refuse) return;
        if (judgement is Judgement.Wait) remarks.Waiting++;
        else remarks.Taken++;
        if (judgement is Judgement.Use) so.Add(item.Reading);
        if (!run.Stores) return;
        var id = run.Ids[item.Reading.Chain];
        rows.Add(EntryRows.Row(
            id, item.Reading, fingerprint, judgement, FormattableString.Invariant($"{file}:{item.Line}"), run.Now));
        run.Changed.Add(id);
    }

    /// <summary>
    /// A counter that cannot be waits, with what it may have been; one that was plainly set back is taken with a remark.
    /// </summary>
    private Judgement Judge(Reading reading, ChainSoFar so)
    {
        var judgement = ReadingJudge.Judge(reading, so, run.Now);
        if (judgement is not (Judgement.Use or Judgement.Wait { Column: "counter_h" })) return judgement;
        if (so.TemperatureOff(reading) is { Length: > 0 } why) return new Judgement.Wait("temperature_c", why);
        if (so.CounterDoubt(reading, run.Calendar, run.OnTheLineOf(so.Card)) is not { } doubt) return judgement;
        return judgement is Judgement.Use { Remark.Length: > 0 } && doubt.Slips is [{ Kind: SlipKind.CounterReset }, ..]
            ? judgement
            : new Judgement.Wait(doubt.Column, doubt.Question);
    }
}
