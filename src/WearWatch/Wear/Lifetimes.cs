using WearWatch.Gauging;

namespace WearWatch.Wear;

/// <summary>Cuts the line of a position's running hours into the fitted chains that ran there.</summary>
/// <param name="Chains">The fitted chains in order; never empty.</param>
/// <param name="Places">Per reading: the fitted chain it belongs to and its hours there; none where nothing places it.</param>
internal sealed record Lifetimes(IReadOnlyList<FittedChain> Chains, IReadOnlyDictionary<int, (int Life, double Hours)> Places)
{
    private const double SameHours = 0.5;

    /// <summary>Cuts a log laid on a line of hours.</summary>
    public static Lifetimes Of(Happening[] log, HourLine line, IReadOnlyList<GaugedReading> gauged)
    {
        var cuts = Cuts(log, line, gauged);
        var chains = new List<FittedChain>();
        var places = new Dictionary<int, (int, double)>();
        for (var life = 0; life < cuts.Count; life++)
        {
            var (start, fittedAt, recorded, entries) = cuts[life];
            var zero = start ?? (entries.Count > 0 ? entries[0].LineHours : 0);
            foreach (var entry in entries) places[entry.ReadingIndex] = (life, entry.LineHours - zero);
            double? end = life + 1 < cuts.Count ? cuts[life + 1].Start : null;
            var observations = Observations(entries, zero, gauged);
            var mostWorn = MostWorn(observations, gauged);
            chains.Add(new(
                recorded, (end ?? (entries.Count > 0 ? entries[^1].LineHours : zero)) - zero, end is not null, mostWorn)
            {
                Outdone = [.. observations.Select(o => o.ReadingIndex).Except(mostWorn.Select(o => o.ReadingIndex))],
                FittingKnown = start is not null,
                FittedAt = fittedAt,
                Lot = cuts[life].Lot,
                Strands = StrandsOfLastVisit(entries, gauged),
                LastReadingIndex = entries.Count > 0 ? entries[^1].ReadingIndex : null,
            });
        }

        return new(chains, places);
    }

    private static List<Cut> Cuts(Happening[] log, HourLine line, IReadOnlyList<GaugedReading> gauged)
    {
        List<Cut> recorded = [new(null, null, false, [])];
        for (var i = 0; i < log.Length; i++)
        {
            if (line.Hours[i] is not { } hours) continue;
            if (log[i].IsFitting) recorded.Add(new(hours, log[i].At, true, []) { Lot = log[i].Lot });
            if (log[i].ReadingIndex >= 0) recorded[^1].Entries.Add((log[i].ReadingIndex, hours));
        }

        if (recorded.Count > 1 && recorded[0].Entries.Count == 0) recorded.RemoveAt(0);
        var areRecorded = recorded.Exists(c => c.Recorded);
        return [.. recorded.SelectMany(c => CutByReadings(c, areRecorded, gauged))];
    }

    private static IEnumerable<Cut> CutByReadings(Cut cut, bool fittingsRecorded, IReadOnlyList<GaugedReading> gauged)
    {
        var observations = Observations(cut.Entries, 0, gauged);
        while (UnrecordedReplacement.StartIn(observations, fittingsRecorded) is { } first)
        {
            // The observations stand in hours on the line here.
            var (last, next) = (observations[first - 1].HoursSinceFitting, observations[first].HoursSinceFitting);
            var start = next - UnrecordedReplacement.HoursBeforeFirstReading(next - last, observations.Skip(first));
            yield return cut with { Entries = cut.Entries.FindAll(e => e.LineHours < start) };
            cut = new(start, null, false, cut.Entries.FindAll(e => e.LineHours >= start));
            observations = observations[first..];
        }

        yield return cut;
    }

    private static List<Observation> Observations(
        List<(int ReadingIndex, double LineHours)> entries, double zero, IReadOnlyList<GaugedReading> gauged) =>
        [.. from entry in entries
            let elongation = gauged[entry.ReadingIndex].Elongation
            where elongation is not null
            select new Observation(
                entry.LineHours - zero, elongation.Value.Percent, elongation.Value.ScatterPercent, entry.ReadingIndex)];

    /// <summary>
    /// Wear differs along a chain and its worst place governs, as the worst strand does: of several read at the same hours the
    /// longest counts.
    /// </summary>
    private static List<Observation> MostWorn(List<Observation> observations, IReadOnlyList<GaugedReading> gauged)
    {
        var kept = new List<Observation>(observations.Count);
        foreach (var now in observations)
        {
            var rival = kept.FindIndex(o => now.HoursSinceFitting - o.HoursSinceFitting <= SameHours && SpotOf(o) != SpotOf(now));
            if (rival < 0) kept.Add(now);
            else if (now.ElongationPercent > kept[rival].ElongationPercent)
                kept[rival] = now with { HoursSinceFitting = kept[rival].HoursSinceFitting };
        }

        return kept;

        (string Place, int? Strand) SpotOf(Observation o) =>
            (gauged[o.ReadingIndex].Reading.Place, gauged[o.ReadingIndex].Reading.Strand);
    }

    /// <summary>How much the strands differed that were measured at the last visit; null for fewer than two.</summary>
    private static StrandSpread? StrandsOfLastVisit(
        List<(int ReadingIndex, double LineHours)> entries, IReadOnlyList<GaugedReading> gauged) => StrandSpread.Of(
            from entry in entries
            where entries[^1].LineHours - entry.LineHours <= SameHours
            let of = gauged[entry.ReadingIndex]
            where of.Elongation is not null && of.Reading.Strand is not null
            select (of.Reading.Strand!.Value, of.Elongation!.Value));

    /// <param name="Start">Hours on the line at fitting; null when nothing tells.</param>
    /// <param name="At">When it was fitted, if that was told.</param>
    /// <param name="Recorded">Whether the fitting is recorded.</param>
    /// <param name="Entries">The readings with their hours on the line.</param>
    private sealed record Cut(
        double? Start, DateTimeOffset? At, bool Recorded, List<(int ReadingIndex, double LineHours)> Entries)
    {
        /// <summary>The lot that was told at its fitting, or empty.</summary>
        public string Lot { get; init; } = "";
    }
}
