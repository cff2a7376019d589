using System.Globalization;
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Lives;
using WearWatch.Plant.Books;

namespace WearWatch.Dashboard.Engineer.LifeData;

/// <summary>What the page of lives shows.</summary>
public sealed record LivesView
{
    /// <summary>The groups, the one with the most lives first.</summary>
    public required IReadOnlyList<GroupOfLives> Groups { get; init; }

    /// <summary>The groups that are drawn and compared.</summary>
    public required IReadOnlyList<GroupOfLives> Drawn { get; init; }

    /// <summary>Whether the drawn groups last equally long.</summary>
    public required LogRank Difference { get; init; }

    /// <summary>Lives that are left out since their fitting is not recorded.</summary>
    public required int LeftOut { get; init; }

    public required LifeLaw Law { get; init; }

    public int Lives => Groups.Sum(g => g.Lives.Count);

    public IReadOnlyList<string> DrawnNames => [.. Drawn.Select(g => g.Name)];

    /// <summary>The comparison in a sentence.</summary>
    public string DifferenceInWords => InWords(Difference, Drawn.Count);

    /// <summary>What to beware of where most of the drawn lives that ended were swapped early; null where not.</summary>
    public string? SwappedEarlyInWords => Drawn.Where(g => g.MostlySwappedEarly).ToList() is { Count: > 0 } early
        ? $"Swapped before the limit: {Show.Count(early.Sum(g => g.ReplacedBefore))}; reached it: "
            + $"{Show.Count(early.Sum(g => g.Failures))}. Plain figures then put lives too long. Go by those from wear."
        : null;

    /// <summary>A comparison of so many groups in a sentence.</summary>
    public static string InWords(LogRank difference, int groups) => (groups, difference.DegreesOfFreedom) switch
    {
        ( < 2, _) => "Draw two or more groups to compare them.",
        (_, 0) => "Too few failures to compare these groups.",
        _ => string.Create(
            CultureInfo.InvariantCulture,
            $"Log-rank test of the {groups} groups drawn: chi-square {difference.ChiSquare:0.00} on "
            + $"{difference.DegreesOfFreedom}, "
            + $"p {Chance(difference.PValue)}. {Conclusion(difference.PValue)}"),
    };

    public static LivesView Of(FleetLives fleet, LivesFilter filter)
    {
        var law = filter.Lognormal ? LifeLaw.Lognormal : LifeLaw.Weibull;
        var lives = fleet.Chains.SelectMany(chain => chain.Lives.Select(life => (Card: chain.CardOf(life), life))).ToList();
        var groups = lives.Where(l => l.life.FittingKnown).GroupBy(l => filter.By.Of(l.Card), l => l.life.Life)
            .OrderByDescending(g => g.Count()).ThenBy(g => g.Key, StringComparer.Ordinal)
            .AsParallel().AsOrdered().Select(g => GroupOfLives.Of(g.Key, [.. g], law)).ToList();
        var drawn = groups.Where(g => filter.Shown.Contains(g.Name)).ToList();
        if (drawn.Count == 0) drawn = [.. groups.Take(filter.By == LifeGrouping.All ? 1 : 4)];
        return new LivesView
        {
            Groups = groups,
            Drawn = drawn,
            Difference = LogRank.Compare([.. drawn.Select(g => g.Lives)]),
            LeftOut = lives.Count(l => !l.life.FittingKnown),
            Law = law,
        };
    }

    private static string Chance(double p) => p < 0.001 ? "below 0.001" : p.ToString("0.000", CultureInfo.InvariantCulture);

    private static string Conclusion(double p) => p switch
    {
        < 0.01 => "They do not last equally long.",
        < 0.1 => "A hint of a difference, no more.",
        _ => "No difference is seen.",
    };
}
