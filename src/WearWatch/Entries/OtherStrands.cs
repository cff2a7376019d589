using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Phrases;
using WearWatch.Wear;

namespace WearWatch.Entries;

/// <summary>What the other strands and places of a chain would show, by how they stood against the one that was told.</summary>
internal static class OtherStrands
{
    private const double SameVisitHours = 12;
    private const double LeastPercent = 0.1;
    private const int FewestVisits = 2;
    private const int VisitsThatTell = 6;

    /// <summary>Nobody foretells better how two strands stand to each other.</summary>
    private const double LeastRatioDeviation = 0.03;

    /// <summary>The others with what they would show; empty where no two were measured at the same visits.</summary>
    /// <param name="card">The chain.</param>
    /// <param name="readings">Its readings before.</param>
    /// <param name="entry">The entry, with the strand and place that were told.</param>
    /// <param name="expected">What that one is expected to show.</param>
    public static IReadOnlyList<(Phrase Words, Expectation Expected)> Of(
        ChainCard card, IReadOnlyList<Reading> readings, Reading entry, Expectation expected)
    {
        if (readings.All(r => IsSame(r, entry))) return [];
        var told = GaugedReading.All(card, readings)
            .Where(g => g is { Elongation.Percent: > LeastPercent, Reading.Counter: not null }).ToList();
        var own = told.Where(g => IsSame(g.Reading, entry)).ToList();
        return
        [
            .. from others in told.Where(g => !IsSame(g.Reading, entry)).GroupBy(g => (g.Reading.Place, g.Reading.Strand))
               let ratios = Ratios([.. others], own)
               where ratios.Length >= FewestVisits
               let mean = ratios.Average()
               let deviation = Math.Max(LeastRatioDeviation, Math.Sqrt(ratios.Average(r => (r - mean) * (r - mean))))
               select (Words(others.Key.Place, others.Key.Strand), new Expectation(mean * expected.MeanPercent, Math.Sqrt(
                   Square(mean * expected.StandardDeviationPercent) + Square(deviation * expected.MeanPercent))))
        ];
    }

    private static double[] Ratios(IReadOnlyList<GaugedReading> others, IReadOnlyList<GaugedReading> own) =>
        [.. (from other in others
             from same in own.Where(g => Math.Abs(
                 g.Reading.Counter!.Value.Hours - other.Reading.Counter!.Value.Hours) <= SameVisitHours).Take(1)
             select other.Elongation!.Value.Percent / same.Elongation!.Value.Percent).TakeLast(VisitsThatTell)];

    private static bool IsSame(Reading one, Reading other) => one.Place == other.Place && one.Strand == other.Strand;

    private static Phrase Words(string place, int? strand) => (place, strand) switch
    {
        (_, { } number) => $"strand {number} instead of the one entered",
        ("", null) => $"another place than the one entered",
        _ => $"place {place} instead of the one entered",
    };

    private static double Square(double x) => x * x;
}
