namespace WearWatch.Benchmarks.Passes;

/// <summary>What came of a scenario's days.</summary>
/// <param name="Days">How many were simulated.</param>
internal sealed record PassScore(int Days)
{
    /// <summary>Days that made a reading with the right count.</summary>
    public int Kept { get; set; }

    /// <summary>Days that made a reading with a wrong count, or off by more than 0.1 points.</summary>
    public int Wrong { get; set; }

    /// <summary>Readings that their uncertainty covers at k = 2.</summary>
    public int Covered { get; set; }

    /// <summary>Readings within 0.02 points.</summary>
    public int Near { get; set; }

    /// <summary>The sum of the stated standard uncertainties, in percent.</summary>
    public double Uncertainty { get; set; }

    /// <summary>Days that were refused, by why.</summary>
    public SortedDictionary<string, int> Refused { get; } = [];

    /// <summary>Whether what was asked is reached within some days, and no reading is wrong.</summary>
    public bool IsReached(PassScenario scenario, double slack = 0) =>
        Wrong == 0 && scenario.Bars.All(bar => Reached(bar.Asked) + slack >= bar.Share * Of(bar.Asked));

    /// <summary>Of how many it is asked: coverage and nearness of those that were believed.</summary>
    private int Of(PassAsked asked) => asked is PassAsked.Covered or PassAsked.Near ? Kept + Wrong : Days;

    /// <summary>How many did what was asked.</summary>
    private int Reached(PassAsked asked) => asked switch
    {
        PassAsked.Kept => Kept,
        PassAsked.Covered => Covered,
        PassAsked.Near => Near,
        _ => Refused.Values.Sum(),
    };
}
