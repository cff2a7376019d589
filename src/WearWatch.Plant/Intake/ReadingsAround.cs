using WearWatch.Gauging;
using WearWatch.Storage;

namespace WearWatch.Plant.Intake;

/// <summary>The readings of a chain around one that is corrected, that one left out, whether it stands or waits.</summary>
/// <param name="Before">Those before it: by dates, and without them by the order in which they came.</param>
/// <param name="After">Those after it.</param>
internal sealed record ReadingsAround(IReadOnlyList<Reading> Before, IReadOnlyList<Reading> After)
{
    /// <summary>Around what takes the place of a reading; all are before one that corrects none.</summary>
    /// <param name="chain">The chain.</param>
    /// <param name="takenAt">When the correction was taken, if it tells.</param>
    /// <param name="corrects">The reading that it corrects; null for none.</param>
    public static ReadingsAround Of(RawChain chain, DateTimeOffset? takenAt, long? corrects)
    {
        if (corrects is not { } corrected) return new(chain.Readings, []);
        var others = chain.ReadingRows.Zip(chain.Readings, (row, reading) => (Row: row, Reading: reading))
            .Where(r => r.Row.Id != corrected && r.Row.CorrectsId != corrected)
            .ToLookup(
                r => r.Row.TakenAt is { } at && takenAt is { } here ? at > here : (r.Row.CorrectsId ?? r.Row.Id) > corrected,
                r => r.Reading);
        return new([.. others[false]], [.. others[true]]);
    }
}
