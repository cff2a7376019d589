using WearWatch.Running;

namespace WearWatch.Wear;

/// <summary>
/// Gives entries that have only a date the counter they would have shown: between two dated counters in proportion to planned
/// production, beyond them by the production calendar.
/// </summary>
internal static class MissingCounters
{
    /// <summary>The log with counters filled in where dates allow; entries that nothing can place keep none.</summary>
    public static Happening[] Fill(IReadOnlyList<Happening> log, ProductionCalendar calendar)
    {
        Happening[] told = [.. log];
        if (Array.TrueForAll(told, e => e.Before is null)) CountFromFirstDate(told);

        // Only told counters serve as footing, so that filled ones do not lean on one another.
        return [.. told.Select((entry, i) =>
            entry is { Before: null, At: { } at } && CounterAt(told, i, at, calendar) is { } counter
            ? entry with { Before = counter, After = entry.IsReset ? entry.After : counter }
            : entry)];
    }

    /// <summary>Without any counter the first dated entry is where the count begins.</summary>
    private static void CountFromFirstDate(Happening[] log)
    {
        var first = Array.FindIndex(log, e => e.At is not null);
        if (first >= 0) log[first] = log[first] with { Before = 0, After = 0 };
    }

    private static double? CounterAt(Happening[] told, int index, DateTimeOffset at, ProductionCalendar calendar)
    {
        var before = Footing(told, index, -1);
        var after = Footing(told, index, +1);
        if (before is { } b && after is { } a && a.Before >= b.After && a.At > b.At)
        {
            var whole = calendar.Between(b.At!.Value, a.At!.Value).Hours;
            if (whole > 0)
                return b.After + (a.Before - b.After) * Math.Clamp(calendar.Between(b.At.Value, at).Hours / whole, 0, 1);
        }

        return before is { } footing ? footing.After + calendar.Between(footing.At!.Value, at).Hours
            : after is { } next ? next.Before - calendar.Between(at, next.At!.Value).Hours
            : null;
    }

    /// <summary>The nearest entry with date and counter on one side, not beyond a change of the counter.</summary>
    private static Happening? Footing(Happening[] told, int from, int step)
    {
        for (var i = from + step; i >= 0 && i < told.Length; i += step)
        {
            if (told[i] is { Before: not null, After: not null, At: not null }) return told[i];
            if (told[i].IsReset) return null;
        }

        return null;
    }
}
