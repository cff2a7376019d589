using WearWatch.Entries;
using WearWatch.Storage;
using WearWatch.Storage.Engines;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Intake;

/// <summary>
/// The events of an import. One whose counter or chain can be asked about is held until the readings around it are known: else
/// the first import of a plant, in which events go before readings, would believe any. A dated one happens when the readings
/// have come so far; one without a date may belong anywhere, and is judged when all are known.
/// </summary>
internal sealed class HeldEvents(ImportRun run)
{
    private readonly Dictionary<string, PriorityQueue<FileEvent, (DateTimeOffset At, int Order)>> held = [];
    private readonly List<FileEvent> undated = [];
    private readonly HashSet<string> fingerprints = [];
    private readonly List<EventRow> rows = [];
    private readonly List<EventRow> happened = [];
    private int order;

    /// <summary>Whether an equal event of this import is held, so that the plant's memory does not know it yet.</summary>
    public bool Knows(string fingerprint) => fingerprints.Contains(fingerprint);

    /// <summary>Takes an event, at once or when what goes around it is known.</summary>
    public void Take(FileEvent told)
    {
        if (!told.CanBeAskedAbout)
        {
            Keep(told, rows);
            return;
        }

        fingerprints.Add(told.Fingerprint);
        if (told.Event.At is { } at)
        {
            if (!held.TryGetValue(told.Event.Chain, out var events)) held[told.Event.Chain] = events = new();
            events.Enqueue(told, (at, order++));
            return;
        }

        // It explains why a counter falls among the readings to come.
        run.SoFar[told.Event.Chain].Add(told.Event);
        undated.Add(told);
    }

    /// <summary>Goes on to a moment of a chain; all that is held of it happens where none is told.</summary>
    public void HappenUntil(string chain, DateTimeOffset? until)
    {
        if (!held.TryGetValue(chain, out var events)) return;
        while (events.TryPeek(out var told, out var next) && (until is null || next.At <= until))
        {
            events.Dequeue();
            Judge(told);
        }
    }

    /// <summary>
    /// All that no reading came after happens, by a replacement among it the forecast stands; and what has no date. That goes
    /// before the others, since a row without date stays behind the one after which it arrived.
    /// </summary>
    public void HappenToTheEnd()
    {
        foreach (var events in held.Values)
        {
            while (events.TryDequeue(out var told, out _)) Judge(told, isNewest: true);
        }

        JudgeUndated();
        rows.AddRange(happened);
    }

    /// <summary>What has no date is judged by the readings that are known by now.</summary>
    public void JudgeUndated()
    {
        foreach (var told in undated) JudgeUndated(told);
        undated.Clear();
    }

    /// <summary>Stores what was taken at once, and at the end the rest.</summary>
    public async Task SaveAsync(WearDb db, CancellationToken ct)
    {
        if (run.Stores) await db.AddManyAsync(rows, ct);
        rows.Clear();
    }

    private void AskWhich(FileEvent told)
    {
        var so = run.SoFar[told.Event.Chain];
        if (so.LastTakenAt > told.Event.At) return;
        if (so.WhichDoubt(told.Event, run.PriorFor, run.Calendar, run.OnTheLineOf(so.Card)) is { } which)
        {
            told.Remarks.Add(
                told.Line, "chain", $"{which.Question} Taken as written; withdraw the replacement if it was another.",
                RemarkKind.Warning);
        }
    }

    private void Judge(FileEvent told, bool isNewest = false)
    {
        var so = run.SoFar[told.Event.Chain];
        if (Doubt(told) is { } doubt)
        {
            if (doubt.Accounts is not [{ Kind: SlipKind.CounterReset }, ..])
            {
                SendBack(told, doubt);
                return;
            }

            told.Remarks.Add(told.Line, "counter_h_before",
                $"{doubt.Expected.Words} Taken as a counter that was set back without record.", RemarkKind.Warning);
            so.AddSetBack(told.Event);
        }
        else
        {
            if (isNewest) AskWhich(told);
            so.Add(told.Event);
        }

        Keep(told, happened);
    }

    private void JudgeUndated(FileEvent told)
    {
        if (Doubt(told) is { } doubt)
        {
            run.SoFar[told.Event.Chain].TakeBack(told.Event);
            SendBack(told, doubt);
        }
        else Keep(told, rows);
    }

    private CounterEvidence? Doubt(FileEvent told)
    {
        var so = run.SoFar[told.Event.Chain];
        return so.CounterDoubt(told.Event, run.Calendar, run.OnTheLineOf(so.Card));
    }

    private static void SendBack(FileEvent told, CounterEvidence doubt) => told.Remarks.Add(
        told.Line, "counter_h_before", $"{doubt.Question} Correct the row and import the file again.", RemarkKind.Refused);

    private void Keep(FileEvent told, List<EventRow> into)
    {
        told.Remarks.Taken++;
        if (!run.Stores) return;
        var id = run.Ids[told.Event.Chain];
        into.Add(EntryRows.Row(id, told.Event, (KeyOwner.Program, told.Fingerprint), told.By, run.Now));
        run.Changed.Add(id);
    }
}
