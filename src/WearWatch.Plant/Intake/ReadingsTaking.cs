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
/// Of each chain the newest rows are held. A row is asked about when some have come after it, by what came before and after. The
/// newest length, by which the forecast stands, is asked about when the file is through, as an entry by a person is, and where it
/// waits, so is the one before it.
/// </remarks>
internal sealed class ReadingsTaking(ImportRun run, RemarkList remarks, ImportFile file)
{
    /// <summary>The newest rows of each chain, on which no verdict was given yet.</summary>
    private readonly Dictionary<string, List<HeldRow>> newest = [];

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
                Hold(rows, new HeldRow(item, fingerprint, IsStored: true), so);
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
        // A change of the counter that cannot be is not to make the newest lengths wait.
        if (newest.Count > 0) run.Events.JudgeUndated();
        var rows = new List<ReadingRow>();
        foreach (var (chain, held) in newest)
        {
            var so = run.SoFar[chain];
            // They are kept in the order in which they were taken, so that rows without dates stay in it.
            var waits = new Stack<(HeldRow Row, EntryDoubt Why)>();
            while (held is [.., { IsStored: false } last] && Doubt(so, after: 0) is { } doubt)
            {
                waits.Push((last, doubt));
                TakeBack(held, so, after: 0);
            }

            Release(rows, held, so, leaves: 0);
            foreach (var (row, why) in waits) Wait(rows, row, why);
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
            Hold(rows, new HeldRow(item, fingerprint, IsStored: false), so);
        }
        else
        {
            Keep(rows, item, fingerprint, judgement);
        }
    }

    private void Hold(List<ReadingRow> rows, HeldRow row, ChainSoFar so)
    {
        so.Add(row.Item.Reading);
        if (!newest.TryGetValue(so.Card.Name, out var held)) newest[so.Card.Name] = held = [];
        held.Add(row);
        Release(rows, held, so, leaves: KnownChain.ReadingsAfter);
    }

    /// <summary>Keeps the oldest of the rows that are held of a chain, or lets it wait where those after it say so too.</summary>
    private void Release(List<ReadingRow> rows, List<HeldRow> held, ChainSoFar so, int leaves)
    {
        while (held.Count > leaves)
        {
            var after = held.Count - 1;
            if (after > 0 && !held[0].IsStored && Doubt(so, after) is { } doubt)
            {
                Wait(rows, held[0], doubt);
                TakeBack(held, so, after);
                continue;
            }

            if (!held[0].IsStored) Keep(rows, held[0].Item, held[0].Fingerprint, new Judgement.Use());
            held.RemoveAt(0);
        }
    }

    private EntryDoubt? Doubt(ChainSoFar so, int after) =>
        so.LengthDoubt(after, run.PriorFor(so.Card), run.Calendar, run.OnTheLineOf(so.Card));

    private static void TakeBack(List<HeldRow> held, ChainSoFar so, int after)
    {
        held.RemoveAt(held.Count - 1 - after);
        so.TakeBack(after);
    }

    /// <summary>Lets a row that was taken wait for a person.</summary>
    private void Wait(List<ReadingRow> rows, HeldRow row, EntryDoubt doubt)
    {
        var why = new Judgement.Wait(doubt.Column, doubt.Question);
        remarks.Add(row.Item.Line, why);
        remarks.Taken--;
        remarks.Waiting++;
        Keep(rows, row.Item, row.Fingerprint, why);
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

    /// <summary>A row that no verdict has been given on; one that is stored already tells of those before it.</summary>
    private sealed record HeldRow(FileItem.Measured Item, string Fingerprint, bool IsStored);
}
