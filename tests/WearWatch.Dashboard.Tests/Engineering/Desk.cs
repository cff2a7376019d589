using WearWatch.Chains;
using WearWatch.Lives;
using WearWatch.Plant.Books;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Tests.Engineering;

/// <summary>Lives and scores with defaults, for the tests of the engineer's desk.</summary>
internal static class Desk
{
    public static ChainCard Card(string name = "K-1", string line = "Press", string type = "16B-1",
        LubricationState? lubrication = LubricationState.Manual,
        DustLevel? dust = DustLevel.Clean, double? load = 0.5) => new()
        {
            Name = name,
            Line = line,
            ChainType = type,
            PitchMm = 25.4,
            Duty = new Duty { RelativeLoad = load, SpeedMetresPerSecond = 1, Lubrication = lubrication, Dust = dust },
        };

    public static BookedChain Chain(ChainCard card, params (double Hours, LifeEnd End)[] lives) =>
        new(1, card, 3, [.. lives.Select((l, i) => new BookedLife(i, new Life(l.Hours, l.End), FittingKnown: true))]);

    /// <summary>A line of chains that all reached their limit, at these hours.</summary>
    public static IEnumerable<BookedChain> Failed(string line, params double[] hours) =>
        hours.Select((h, i) => Chain(Card($"{line}-{i}", line), (h, LifeEnd.ReachedLimit)));

    public static FleetLives Fleet(params IEnumerable<BookedChain>[] chains) => new(1, [.. chains.SelectMany(c => c)]);

    /// <summary>A forecast at half of a life of 2,000 h, from 600 to 1,400 h left; the truth is 1,000.</summary>
    public static RecordedForecast Recorded(double life = 2000, double share = 0.5, string model = "m1", string line = "Press") =>
        new(
        new ScoredForecast
        {
            Forecast = new WearForecast { LimitPercent = 3, ProbabilityPassed = 0, PercentilesHours = A.Percentiles(600, 1400) },
            LastReadingHours = share * 2000,
            StandingHours = share * 2000,
            LifeHours = life,
        },
        share, model, Card(line: line));
}
