using WearWatch.Plant.Settings;

namespace WearWatch.Dashboard.Technician.Oiling;

/// <summary>The round with the oil can: what is due by line, in walking order.</summary>
/// <param name="Chains">The chains that are due within a week.</param>
/// <param name="Time">Now.</param>
public sealed record DueList(IReadOnlyList<DueChain> Chains, PlantTime Time)
{
    /// <summary>The lines with their chains by position.</summary>
    public IReadOnlyList<(string Line, IReadOnlyList<DueChain> Chains)> Lines =>
    [
        .. Chains.GroupBy(c => c.Line).OrderBy(g => g.Key, StringComparer.OrdinalIgnoreCase)
            .Select(g => (g.Key, (IReadOnlyList<DueChain>)[.. g.OrderBy(c => c.Position, StringComparer.OrdinalIgnoreCase)
                .ThenBy(c => c.Name, StringComparer.OrdinalIgnoreCase)])),
    ];

    /// <summary>How many are in a state.</summary>
    public int Count(DueState state) => Chains.Count(c => c.State == state);
}
