using WearWatch.Chains;
using WearWatch.Plant.Books;

namespace WearWatch.Plant.Costs;

/// <summary>What the chains of a plant cost in a year and in the one before it, by group.</summary>
public sealed record FleetCosts
{
    /// <summary>The groups with the year up to now and the year before it; the dearest first.</summary>
    public required IReadOnlyList<(string Group, CostStatement Year, CostStatement Before)> Groups { get; init; }

    /// <summary>All chains together.</summary>
    public required (CostStatement Year, CostStatement Before) All { get; init; }

    /// <summary>What things cost.</summary>
    public required CostTerms Terms { get; init; }

    /// <summary>Lives that were taken off on a day that nobody told, and so are in no year.</summary>
    public required int Undated { get; init; }

    /// <summary>Adds up the lives of a fleet.</summary>
    /// <param name="fleet">The lives of all chains.</param>
    /// <param name="terms">What things cost.</param>
    /// <param name="groupOf">The group that a chain belongs to, by its card.</param>
    /// <param name="now">The end of the year.</param>
    /// <param name="oilings">Oilings by chain, in the year and in the one before.</param>
    public static FleetCosts Of(
        FleetLives fleet, CostTerms terms, Func<ChainCard, string> groupOf, DateTimeOffset now,
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
                Book(groupOf(chain.CardOf(life)), CostStatement.Of(chain, life, terms, year),
                    CostStatement.Of(chain, life, terms, year.YearBefore));
            if (oilings.TryGetValue(chain.Id, out var oiled) && chain.Lives.Count > 0)
                Book(groupOf(chain.CardOf(chain.Lives[^1])), oiled.Year.ToSheet(), oiled.Before.ToSheet());
        }

        return new FleetCosts
        {
            Groups =
            [
                .. groups.Select(g => (Group: g.Key, g.Value.Year, g.Value.Before))
                    .Where(g => g.Year.Hours + g.Before.Hours + g.Year.Total > 0)
                    .OrderByDescending(g => g.Year.PerThousandHours ?? 0).ThenBy(g => g.Group, StringComparer.Ordinal),
            ],
            All = (CostStatement.Sum(groups.Values.Select(g => g.Year)), CostStatement.Sum(groups.Values.Select(g => g.Before))),
            Terms = terms,
            Undated = fleet.Chains.Sum(c => c.Lives.Count(l => l.Removed && l.EndedAt is null)),
        };
    }
}
