using Microsoft.EntityFrameworkCore;
using WearWatch.Gauging;
using WearWatch.Plant.Intake;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Planning;

/// <summary>
/// Takes the lengths that were measured at a swap: the last reading of the old chain, and the baseline of the new.
/// </summary>
/// <param name="desk">Where readings come in.</param>
internal sealed class SwapLengths(IntakeDesk desk)
{
    /// <summary>The old chain is measured so long before its replacement is written down, the new one as long after.</summary>
    private static readonly TimeSpan Apart = TimeSpan.FromMinutes(1);

    /// <summary>The last reading of the old chain.</summary>
    public Task<IntakeAnswer?> OldAsync(string chain, SwapDone told, string key, string by, CancellationToken ct) =>
        TakeAsync(chain, told.OldLength, told, told.At - Apart, $"{key}-old", by, ct);

    /// <summary>The baseline of the new chain.</summary>
    public Task<IntakeAnswer?> NewAsync(string chain, SwapDone told, string key, string by, CancellationToken ct) =>
        TakeAsync(chain, told.NewLength, told, told.At + Apart, $"{key}-new", by, ct);

    /// <summary>Takes back what was taken under a key, with all that came of it.</summary>
    public async Task WithdrawAsync(WearDb db, string key, string by, string why, CancellationToken ct)
    {
        foreach (var id in await Of(db, key).Select(r => r.Id).ToListAsync(ct)) await desk.WithdrawAsync(id, by, why, ct);
    }

    /// <summary>What was taken under a key, as it was told.</summary>
    public static IQueryable<ReadingRow> Of(WearDb db, string key) =>
        db.Readings.Where(r => r.KeyOwner == KeyOwner.Program && r.Key.StartsWith(key + "-") && r.CorrectsId == null);

    private async Task<IntakeAnswer?> TakeAsync(
        string chain, MeasuredLength? length, SwapDone told, DateTimeOffset at, string key, string by, CancellationToken ct) =>
        length is null ? null : await desk.TakeReadingAsync(new NewReading
        {
            // The same told again is the same reading; told otherwise after a refusal it is another.
            KeyOwner = KeyOwner.Program,
            Key = FormattableString.Invariant($"{key}-{at.UtcTicks}-{told.CounterH}-{length.Length}x{length.Pitches}"),
            Chain = chain,
            TakenAt = at,
            CounterH = told.CounterH,
            Tool = Tool.Tape,
            Pitches = length.Pitches,
            Length = length.Length,
            ToldBy = by,
        }, ct);
}
