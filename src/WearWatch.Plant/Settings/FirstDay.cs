using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;

namespace WearWatch.Plant.Settings;

/// <summary>Leads a new plant through what it enters first; each step can be left out, and taken up again.</summary>
public sealed class FirstDay(IDbContextFactory<WearDb> databases, PlantSettings settings)
{
    /// <summary>How far each step is, in their order.</summary>
    public async Task<IReadOnlyList<FirstStepState>> AskAsync(CancellationToken ct)
    {
        var plant = await settings.CurrentAsync(ct);
        var skipped = plant.StepsSkipped.Split(' ', StringSplitOptions.RemoveEmptyEntries).ToHashSet();
        await using var db = await databases.CreateDbContextAsync(ct);
        var lines = await db.Chains.Select(c => c.Line).Distinct().ToListAsync(ct);
        var types = await db.Chains.Select(c => c.ChainType).Distinct().ToListAsync(ct);
        var chains = await db.Chains.CountAsync(ct);
        return [.. Enum.GetValues<FirstStep>().Select(step => (step, count: CountOf(step)))
            .Select(s => new FirstStepState(s.step, s.count.Done, s.count.Of, skipped.Contains(s.step.ToString())))];

        (int Done, int Of) CountOf(FirstStep step) => step switch
        {
            FirstStep.Zone => (plant.TimeZone == "UTC" ? 0 : 1, 1),
            FirstStep.Shifts => (plant.Shifts == "[]" ? 0 : 1, 1),
            FirstStep.Chains => (Math.Min(chains, 1), 1),
            FirstStep.People => (db.People.Any() ? 1 : 0, 1),
            FirstStep.Shutdowns => (
                db.WindowRules.Select(r => r.Line).Distinct().AsEnumerable().Count(lines.Contains), lines.Count),
            FirstStep.Spares => (db.Spares.Where(s => s.Kind == "Chain").Select(s => s.Designation).AsEnumerable()
                .Count(types.Contains), types.Count),
            FirstStep.FirstRound => (db.Chains.Count(c => db.Readings.Any(r => r.ChainId == c.Id)
                || db.LinkMeasures.Any(l => l.ChainId == c.Id)), chains),
            _ => throw new ArgumentOutOfRangeException(nameof(step), step, null),
        };
    }

    /// <summary>Leaves a step out, or takes it up again.</summary>
    public Task SkipAsync(FirstStep step, bool skips, CancellationToken ct) => settings.ChangeAsync(plant =>
    {
        var left = plant.StepsSkipped.Split(' ', StringSplitOptions.RemoveEmptyEntries).Where(s => s != step.ToString());
        plant.StepsSkipped = string.Join(' ', skips ? left.Append(step.ToString()) : left);
    }, ct);
}
