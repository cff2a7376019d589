using WearWatch.Plant.Costs;

namespace WearWatch.Dashboard.Engineer.Costs;

/// <summary>What the page of costs shows.</summary>
public sealed record CostView
{
    /// <summary>The groups with the year up to now and the year before it; the dearest first.</summary>
    public required IReadOnlyList<(string Group, CostStatement Year, CostStatement Before)> Groups { get; init; }

    /// <summary>All chains together.</summary>
    public required (CostStatement Year, CostStatement Before) All { get; init; }

    public required CostTerms Terms { get; init; }

    public required LifeGrouping By { get; init; }

    /// <summary>Lives that were taken off on a day that nobody told, and so are in no year.</summary>
    public required int Undated { get; init; }

    /// <summary>How the year compares with the one before, in a sentence.</summary>
    public string InWords => (All.Year.PerThousandHours, All.Before.PerThousandHours) switch
    {
        ({ } now, { } before) when before > 0 => string.Create(
            System.Globalization.CultureInfo.InvariantCulture,
            $"1,000 running hours cost {CostWords.Money(now, Terms)}, {Math.Abs(100 * (now / before - 1)):0} % "
            + $"{(now > before ? "more" : "less")} than in the year before "
            + $"({CostWords.Money(before, Terms)})."),
        ({ } now, _) => $"1,000 running hours cost {CostWords.Money(now, Terms)}; of the year before nothing is known.",
        _ => "No running hours have dates yet: a fitting and readings with dates give them.",
    };

    /// <summary>Adds up the lives of a fleet.</summary>
    /// <param name="fleet">The lives of all chains.</param>
    /// <param name="terms">What things cost.</param>
    /// <param name="by">By what chains are told apart.</param>
    /// <param name="now">The end of the year.</param>
    /// <param name="oilings">Oilings by chain, in the year and in the one before.</param>
    public static CostView Of(
        WearWatch.Plant.Books.FleetLives fleet, CostTerms terms, LifeGrouping by, DateTimeOffset now,
        IReadOnlyDictionary<int, (OilGiven Year, OilGiven Before)> oilings)
    {
        var year = CostPeriod.YearUpTo(now);
        var groups = new Dictionary<string, (CostStatement Year, CostStatement Before)>();
        void Book(string group, CostStatement inYear, CostStatement before)
        {
            var sum = groups.GetValueOrDefault(group, (new CostStatement(), new CostStatement()));
            groups[group] = (sum.Item1 + inYear, sum.Item2 + before);
        }

        foreach (var chain in fleet.Chains)
        {
            foreach (var life in chain.Lives)
                Book(by.Of(chain.CardOf(life)), CostStatement.Of(chain, life, terms, year),
                    CostStatement.Of(chain, life, terms, year.YearBefore));
            if (oilings.TryGetValue(chain.Id, out var oiled) && chain.Lives.Count > 0)
                Book(by.Of(chain.CardOf(chain.Lives[^1])), oiled.Year.ToSheet(), oiled.Before.ToSheet());
        }

        return new CostView
        {
            Groups =
            [
                .. groups.Select(g => (Group: g.Key, g.Value.Year, g.Value.Before))
                    .Where(g => g.Year.Hours + g.Before.Hours + g.Year.Total > 0)
                    .OrderByDescending(g => g.Year.PerThousandHours ?? 0).ThenBy(g => g.Group, StringComparer.Ordinal)
            ],
            All = (CostStatement.Sum(groups.Values.Select(g => g.Year)), CostStatement.Sum(groups.Values.Select(g => g.Before))),
            Terms = terms,
            By = by,
            Undated = fleet.Chains.Sum(c => c.Lives.Count(l => l.Removed && l.EndedAt is null)),
        };
    }
}
