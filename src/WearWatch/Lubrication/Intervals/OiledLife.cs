using WearWatch.Wear;

namespace WearWatch.Lubrication.Intervals;

/// <summary>One fitted chain from which it can be learned what the age of its oil does to its wear.</summary>
/// <param name="Observations">Its readings in order of running hours, doubted ones left out.</param>
/// <param name="Ages">How old its oil was, hour by hour.</param>
public sealed record OiledLife(IReadOnlyList<Observation> Observations, OilAges Ages)
{
    /// <summary>Fewer usable readings than this tell nothing beyond the chain's own rate.</summary>
    public const int FewestReadings = 4;

    /// <summary>Fewer oilings than this between the first and the last of them are no habit.</summary>
    public const int FewestOilings = 3;

    /// <summary>Sensors read a chain more often than is of use here; so many readings, evenly spread, are looked at.</summary>
    public const int MostReadings = 60;

    /// <summary>
    /// Readings after run-in and before a chain may begin to wear faster by itself are used: between them only its duty, luck
    /// and oil make the rate.
    /// </summary>
    private const double RunInOverHours = 100;
    private const double StraightUpToPercent = 2.0;

    /// <summary>The readings at which the oil's age is known and wear is steady; none where they tell nothing.</summary>
    internal IReadOnlyList<Observation> Usable()
    {
        List<Observation> steady =
        [
            .. Observations.Where(o => o.HoursSinceFitting >= RunInOverHours && o.ElongationPercent <= StraightUpToPercent
                && Ages.AgeAt(o.HoursSinceFitting) is not null),
        ];
        if (steady.Count < FewestReadings || steady[^1].HoursSinceFitting - steady[0].HoursSinceFitting < 1) return [];
        if (OilingsIn(steady) < FewestOilings) return [];
        return steady.Count <= MostReadings
            ? steady
            : [.. Enumerable.Range(0, MostReadings).Select(i => steady[i * (steady.Count - 1) / (MostReadings - 1)])];
    }

    /// <summary>Oilings between the first and the last of some readings.</summary>
    internal int OilingsIn(IReadOnlyList<Observation> readings) => readings.Count == 0 ? 0 : Ages.OiledAtHours.Count(
        h => h > readings[0].HoursSinceFitting && h < readings[^1].HoursSinceFitting);
}
