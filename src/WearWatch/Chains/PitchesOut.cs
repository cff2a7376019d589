using System.Globalization;

namespace WearWatch.Chains;

/// <summary>How many pitches a shortening took out: events have no field for it, so it leads the note, and only here.</summary>
public static class PitchesOut
{
    private const string One = "1 pitch out";
    private const string Many = " pitches out";

    /// <summary>The note of a shortening: <c>2 pitches out; what else was said</c>.</summary>
    public static string Write(int pitches, string more)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(pitches, 1);
        var count = pitches == 1 ? One : pitches.ToString(CultureInfo.InvariantCulture) + Many;
        return more.Trim().Length > 0 ? $"{count}; {more.Trim()}" : count;
    }

    /// <summary>The pitches that a note tells; null when it tells none.</summary>
    public static int? Read(string note)
    {
        var count = note.Split(';', 2)[0].Trim();
        if (count == One) return 1;
        return count.EndsWith(Many, StringComparison.Ordinal)
            && int.TryParse(count.AsSpan(0, count.Length - Many.Length), NumberStyles.None, CultureInfo.InvariantCulture, out var pitches) && pitches > 1
                ? pitches
                : null;
    }

    /// <summary>All pitches taken out of the chain that runs now: since the last replacement.</summary>
    public static int Since(IReadOnlyList<ChainEvent> events)
    {
        var fitted = events.ToList().FindLastIndex(e => e.Kind == ChainEventKind.Replacement);
        return events.Skip(fitted + 1).Where(e => e.Kind == ChainEventKind.Shortened).Sum(e => Read(e.Note) ?? 0);
    }
}
