using Microsoft.EntityFrameworkCore;
using WearWatch.Entries;
using WearWatch.Gauging;
using WearWatch.Plant.Files;
using WearWatch.Storage;
using WearWatch.Storage.Engines;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Intake;

/// <summary>Takes readings of a file in.</summary>
/// <remarks>
/// Of each chain the newest rows are held until the file is through, since by the newest length the forecast stands: it is asked
/// about as an entry by a person is, and where it waits, so is the one before it. The others are weighed by the track, with what
/// came after them.
/// </remarks>
internal sealed class ReadingsTaking(ImportRun run, RemarkList remarks, ImportFile file)
{
    private const int Held = 3;

    private readonly Dictionary<string, List<(FileItem.Measured Item, string Fingerprint)>> newest = [];

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
            run.Events.HappenUntil(item.Reading.Chain, item.Reading.TakenAt);
            if (!run.SoFar.TryGetValue(item.Reading.Chain, out var so))
                ImportRun.RefuseUnknown(remarks, item.Line, item.Reading.Chain);
            else if (remarks.IsRepeated(fingerprint, item.Line, isStored: known.Contains(fingerprint)))
            {
                Release(rows, item.Reading.Chain, leaves: 0);
                so.Add(item.Reading);
            }
            else
            {
                Take(rows, item, fingerprint, so);
            }
        }

        await run.Events.SaveAsync(db, ct);
        if (run.Stores) await db.AddManyAsync(rows, ct);
    }

    /// <summary>Asks about the newest length of each chain and takes the rows that were held.</summary>
    public async Task FinishAsync(WearDb db, CancellationToken ct)
    {
        var rows = new List<ReadingRow>();
        foreach (var (chain, held) in newest)
        {
            var so = run.SoFar[chain];
            var waits = new Stack<(FileItem.Measured Item, string Fingerprint, Judgement.Wait Why)>();
            while (held is [.., var last]
                && so.LengthDoubt(run.PriorFor(so.Card), run.Calendar, run.OnTheLineOf(so.Card)) is { } doubt)
            {
                waits.Push((last.Item, last.Fingerprint, new Judgement.Wait(doubt.Column, doubt.Question)));
                held.RemoveAt(held.Count - 1);
                so.TakeBack();
            }

            Release(rows, chain, leaves: 0);
            foreach (var (item, fingerprint, why) in waits)
            {
                remarks.Add(item.Line, why);
                remarks.Taken--;
                remarks.Waiting++;
                Keep(rows, item, fingerprint, why);
            }
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
        if (judgement is Judgement.Use)
        {
            so.Add(item.Reading);
            if (!newest.TryGetValue(item.Reading.Chain, out var held)) newest[item.Reading.Chain] = held = [];
            held.Add((item, fingerprint));
            Release(rows, item.Reading.Chain, leaves: Held);
        }
        else
        {
            Keep(rows, item, fingerprint, judgement);
        }
    }

    /// <summary>Takes the oldest of the rows that are held of a chain.</summary>
    private void Release(List<ReadingRow> rows, string chain, int leaves)
    {
        if (!newest.TryGetValue(chain, out var held)) return;
        for (; held.Count > leaves; held.RemoveAt(0)) Keep(rows, held[0].Item, held[0].Fingerprint, new Judgement.Use());
    }

    private void Keep(List<ReadingRow> rows, FileItem.Measured item, string fingerprint, Judgement judgement)
    {
        if (!run.Stores) return;
        var id = run.Ids[item.Reading.Chain];
        rows.Add(EntryRows.Row(
            id, item.Reading, (KeyOwner.Program, fingerprint), judgement, file.Maker(item.Line), run.Now));
        run.Changed.Add(id);
    }

    /// <summary>
    /// A counter that cannot be waits, with what it may have been; one that was plainly set back is taken with a remark.
    /// </summary>
    private Judgement Judge(Reading reading, ChainSoFar so)
    {
        var judgement = ReadingJudge.Judge(reading, so, run.Now);
        if (judgement is not (Judgement.Use or Judgement.Wait { Column: "counter_h" })) return judgement;
        if (so.TemperatureOff(reading) is { IsEmpty: false } why) return new Judgement.Wait("temperature_c", why);
        if (so.CounterDoubt(reading, run.Calendar, run.OnTheLineOf(so.Card)) is not { } doubt) return judgement;
        return judgement is Judgement.Use { Remark: not null } && doubt.Slips is [{ Kind: SlipKind.CounterReset }, ..]
            ? judgement
            : new Judgement.Wait(doubt.Column, doubt.Question);
    }
}
