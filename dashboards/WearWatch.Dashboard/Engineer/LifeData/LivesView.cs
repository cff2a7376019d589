using WearWatch.Lives;
using WearWatch.Plant.Books;

namespace WearWatch.Dashboard.Engineer.LifeData;

/// <summary>What the page of lives shows.</summary>
public sealed record LivesView
{
    /// <summary>The groups: those that can be fitted first, the one with the most lives before the others.</summary>
    public required IReadOnlyList<GroupOfLives> Groups { get; init; }

    /// <summary>The groups that are drawn and compared.</summary>
    public required IReadOnlyList<GroupOfLives> Drawn { get; init; }

    /// <summary>Whether the drawn groups last equally long.</summary>
    public required LogRank Difference { get; init; }

    /// <summary>Lives that are left out since their fitting is not recorded.</summary>
    public required int LeftOut { get; init; }

    public required LifeLaw Law { get; init; }

    /// <summary>Groups of which nothing can be fitted yet, which are shown only on demand.</summary>
    public required int NotFitted { get; init; }

    public required int Lives { get; init; }

    public IReadOnlyList<string> DrawnNames => [.. Drawn.Select(g => g.Name)];

    /// <summary>The comparison in a sentence.</summary>
    public string DifferenceInWords => InWords(Difference, Drawn.Count);

    /// <summary>What to beware of where most of the drawn lives that ended were swapped early; null where not.</summary>
    public string? SwappedEarlyInWords => Drawn.Where(g => g.MostlySwappedEarly).ToList() is { Count: > 0 } early
        ? T[$"Swapped before the limit: {early.Sum(g => g.ReplacedBefore):#,0}; reached it: "
            + $"{early.Sum(g => g.Failures):#,0}. Plain figures then put lives too long. Go by those from wear."]
        : null;

    /// <summary>A comparison of so many groups in a sentence.</summary>
    public static string InWords(LogRank difference, int groups) => (groups, difference.DegreesOfFreedom) switch
    {
        ( < 2, _) => T["Draw two or more groups to compare them."],
        (_, 0) => T["Too few failures to compare these groups."],
        _ => T[$"Log-rank test of the {groups} groups drawn: chi-square {difference.ChiSquare:0.00} on "
            + $"{difference.DegreesOfFreedom}, p {Chance(difference.PValue)}. {Conclusion(difference.PValue)}"],
    };

    public static LivesView Of(FleetLives fleet, LivesFilter filter)
    {
        var law = filter.Lognormal ? LifeLaw.Lognormal : LifeLaw.Weibull;
        var lives = fleet.Chains.SelectMany(chain => chain.Lives.Select(life => (Card: chain.CardOf(life), life))).ToList();
        var groups = lives.Where(l => l.life.FittingKnown).GroupBy(l => filter.By.Of(l.Card), l => l.life.Life)
            .OrderByDescending(g => g.Count()).ThenBy(g => g.Key, StringComparer.Ordinal)
            .AsParallel().AsOrdered().Select(g => GroupOfLives.Of(g.Key, [.. g], law)).AsSequential()
            .OrderByDescending(g => g.Fit is not null)
            .ToList();
        var notFitted = groups.Count(g => g.Fit is null);
        var drawn = groups.Where(g => filter.Shown.Contains(g.Name)).ToList();
        if (drawn.Count == 0) drawn = [.. groups.Take(filter.By == LifeGrouping.All ? 1 : 4)];
        return new LivesView
        {
            Groups = filter.Every || notFitted == groups.Count
                ? groups : groups.FindAll(g => g.Fit is not null || filter.Shown.Contains(g.Name)),
            NotFitted = notFitted == groups.Count ? 0 : notFitted,
            Lives = groups.Sum(g => g.Lives.Count),
            Drawn = drawn,
            Difference = LogRank.Compare([.. drawn.Select(g => g.Lives)]),
            LeftOut = lives.Count(l => !l.life.FittingKnown),
            Law = law,
        };
    }

    private static Phrase Chance(double p) => p < 0.001 ? Phrase.Of($"below {0.001:0.000}") : $"{p:0.000}";

    private static Phrase Conclusion(double p) => p switch
    {
        < 0.01 => $"They do not last equally long.",
        < 0.1 => $"A hint of a difference, no more.",
        _ => $"No difference is seen.",
    };
}
