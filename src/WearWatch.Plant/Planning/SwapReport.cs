using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Planning;

/// <summary>The report of a swap that was done: the keys of what it recorded, and what it said.</summary>
internal static class SwapReport
{
    /// <summary>One event a report: what was taken back and reported anew is another one.</summary>
    public static string KeyOf(SwapRow swap) => swap.Undone == 0 ? $"swap-{swap.Id}" : $"swap-{swap.Id}-{swap.Undone}";

    /// <summary>The key of the event that its sprockets were replaced.</summary>
    public static string SprocketKeyOf(SwapRow swap) => KeyOf(swap) + "-sprockets";

    /// <summary>The replacement that it recorded; null for a swap that is not reported as done.</summary>
    public static async Task<EventRow?> EventAsync(WearDb db, SwapRow swap, CancellationToken ct)
    {
        if (swap.Outcome != SwapEnd.Done) return null;
        var key = KeyOf(swap);
        return await db.Events.AsNoTracking().SingleOrDefaultAsync(e => e.KeyOwner == KeyOwner.Program && e.Key == key, ct);
    }

    /// <summary>What was said of a swap that is reported as done.</summary>
    public static async Task<SwapDone> ReadAsync(WearDb db, SwapRow swap, CancellationToken ct)
    {
        var (happened, sprockets) = (await EventAsync(db, swap, ct), SprocketKeyOf(swap));
        var lengths = await SwapLengths.Of(db, KeyOf(swap)).AsNoTracking().ToListAsync(ct);
        return new SwapDone(
            happened!.At!.Value, happened.CounterAfterH, happened.Lot, happened.Broke, happened.TakeUpMm, swap.OutcomeNote)
        {
            NewPitches = happened.NewPitches,
            OldLength = Measured(lengths.Find(r => r.TakenAt < happened.At)),
            NewLength = Measured(lengths.Find(r => r.TakenAt > happened.At)),
            HoursWorked = swap.HoursWorked,
            DoneBy = swap.DoneBy,
            WithSprockets = await db.Events.AnyAsync(e => e.KeyOwner == KeyOwner.Program && e.Key == sprockets, ct),
            FromStock = swap.PartsTaken.Count > 0,
            Confirmed = true, // it was asked about when it was reported
        };
    }

    private static MeasuredLength? Measured(ReadingRow? row) =>
        row is null ? null : new MeasuredLength(row.LengthAsTold, row.Pitches);
}
