using WearWatch.Dashboard.Kit.Words;
using WearWatch.Plant.Settings;

namespace WearWatch.Dashboard.Engineer.Workbench;

/// <summary>What the fields of a calculation share: the texts, what is wrong with them, and where a changed one goes.</summary>
/// <param name="Address">The texts.</param>
/// <param name="Refusals">What is wrong, by name.</param>
/// <param name="Units">The person's units.</param>
/// <param name="Go">Takes the changed texts.</param>
public sealed record BenchForm(
    BenchAddress Address, IReadOnlyList<Refusal> Refusals, UnitPreference Units, Action<BenchAddress> Go)
{
    /// <summary>What is wrong with what stands in a field; null for an empty one, which is only still wanted.</summary>
    public string? WrongWith(string name) =>
        Address.Text(name).Length > 0 && Refusals.FirstOrDefault(r => r.Field == name) is { } refusal ? T[refusal.Reason] : null;

    /// <summary>What is wrong beside the fields that say so themselves.</summary>
    public IEnumerable<Refusal> StillWanted => Refusals.Where(r => WrongWith(r.Field) is null);
}
