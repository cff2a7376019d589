using WearWatch.Plant.Planning;

namespace WearWatch.Dashboard.Planner;

/// <summary>What the swap of one chain takes, as it is typed.</summary>
public sealed class SwapTermsForm
{
    public string Chain { get; set; } = "";

    public string Group { get; set; } = "";

    public double? Hours { get; set; }

    public int? People { get; set; }

    public bool WithSprockets { get; set; }

    public static SwapTermsForm Of(SwapTermsLine line) => new()
    {
        Chain = line.Chain,
        Group = line.Group,
        Hours = line.Hours,
        People = line.People,
        WithSprockets = line.WithSprockets,
    };

    /// <summary>The terms, or what is wrong with them.</summary>
    public (SwapTermsLine? Terms, string? Fault) Read(IReadOnlyList<string> chains)
    {
        if (!chains.Contains(Chain.Trim())) return (null, T[$"No chain is called '{Chain.Trim()}'."]);
        if (Hours is not null and not (> 0 and <= 1000))
        {
            return (null, T[$"A swap takes more than 0 and at most {1000:#,0} hours; leave it empty to go by family and "
                + $"length."]);
        }

        if (People is not null and not (>= 1 and <= 20))
            return (null, T["A swap takes 1 to 20 people; leave it empty to go by family."]);
        return (new SwapTermsLine(Chain.Trim(), "", Group.Trim(), Hours, People, WithSprockets), null);
    }
}
