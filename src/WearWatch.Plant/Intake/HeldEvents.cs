using WearWatch.Entries;
using WearWatch.Storage;
using WearWatch.Storage.Engines;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Intake;

/// <summary>
/// The events of an import. A dated one whose counter or chain can be asked about is held until the readings before it are
/// known: else the first import of a plant, in which events go before readings, would believe any.
/// </summary>
internal sealed class HeldEvents(ImportRun run)
{
    private readonly Dictionary<string, PriorityQueue<FileEvent, (DateTimeOffset At, int Order)>> held = [];
    private readonly HashSet<string> fingerprints = [];
    private readonly List<EventRow> rows = [];
    private int order;

    /// <summary>Whether an equal event of this import is held, so that the plant's memory does not know it yet.</summary>
    public bool Knows(string fingerprint) => fingerprints.Contains(fingerprint);

    /// <summary>Takes an event, at once or when what went before it is known.</summary>
    public void Take(FileEvent told)
    {
        if (told.Event.At is { } at && told.CanBeAskedAbout)
        {
            fingerprints.Add(told.Fingerprint);
            if (!held.TryGetValue(told.Event.Chain, out var events)) held[told.Event.Chain] = events = new();
            events.Enqueue(told, (at, order++));
        }
        else
        {
            Judge(told);
        }
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

    /// <summary>All that no reading came after happens; by a replacement among it the forecast stands.</summary>
    public void HappenToTheEnd()
    {
        foreach (var events in held.Values)
        {
            while (events.TryDequeue(out var told, out _)) Judge(told, isNewest: true);
        }
    }

    /// <summary>Stores what was taken so far.</summary>
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
        var (so, happening, remarks) = (run.SoFar[told.Event.Chain], told.Event, told.Remarks);
        if (so.CounterDoubt(happening, run.Calendar, run.OnTheLineOf(so.Card)) is { } doubt)
        {
            if (doubt.Accounts is not [{ Kind: SlipKind.CounterReset }, ..])
            {
                remarks.Add(told.Line, "counter_h_before", $"{doubt.Question} Correct the row and import the file again.",
                    RemarkKind.Refused);
                return;
            }

            remarks.Add(told.Line, "counter_h_before",
                $"{doubt.Expected.Words} Taken as a counter that was set back without record.", RemarkKind.Warning);
            so.AddSetBack(happening);
        }
        else
        {
            if (isNewest) AskWhich(told);
            so.Add(happening);
        }

        remarks.Taken++;
        if (!run.Stores) return;
        var id = run.Ids[happening.Chain];
        rows.Add(EntryRows.Row(id, happening, (KeyOwner.Program, told.Fingerprint), told.By, run.Now));
        run.Changed.Add(id);
    }
}
