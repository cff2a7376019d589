using WearWatch.Plant.Costs;

namespace WearWatch.Dashboard.Engineer.Costs;

/// <summary>What the page of costs shows.</summary>
/// <param name="Costs">What the chains cost, by group.</param>
/// <param name="By">By what chains are told apart.</param>
public sealed record CostView(FleetCosts Costs, LifeGrouping By)
{
    /// <summary>The groups with the year up to now and the year before it; the dearest first.</summary>
    public IReadOnlyList<(string Group, CostStatement Year, CostStatement Before)> Groups => Costs.Groups;

    /// <summary>All chains together.</summary>
    public (CostStatement Year, CostStatement Before) All => Costs.All;

    public CostTerms Terms => Costs.Terms;

    /// <summary>How the year compares with the one before, in a sentence.</summary>
    public string InWords => (All.Year.PerThousandHours, All.Before.PerThousandHours) switch
    {
        ({ } now, { } before) when before > 0 => now > before
            ? T[$"1,000 running hours cost {CostWords.Money(now, Terms)}, {100 * (now / before - 1):0} % more than in the year "
                + $"before ({CostWords.Money(before, Terms)})."]
            : T[$"1,000 running hours cost {CostWords.Money(now, Terms)}, {100 * (1 - now / before):0} % less than in the year "
                + $"before ({CostWords.Money(before, Terms)})."],
        ({ } now, _) => T[$"1,000 running hours cost {CostWords.Money(now, Terms)}; of the year before nothing is known."],
        _ => T["No running hours have dates yet: a fitting and readings with dates give them."],
    };

    /// <summary>Asks for it.</summary>
    public static async Task<CostView> AskAsync(CostQuery costs, LifeGrouping by, CancellationToken ct) =>
        new(await costs.AskAsync(card => by.Of(card), ct), by);
}
