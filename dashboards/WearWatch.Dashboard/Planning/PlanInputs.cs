using Microsoft.EntityFrameworkCore;
using WearWatch.Dashboard.Words;
using WearWatch.Planning.Supply;
using WearWatch.Planning.Windows;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Planning;

/// <summary>Reads and changes what a person gives the planner: shutdowns, the store, costs, parallel strands.</summary>
public sealed class PlanInputs(IDbContextFactory<WearDb> databases, PlantClock clock)
{
    public async Task<PlanInputsView> AskAsync(CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        var chains = await db.Chains.AsNoTracking().OrderBy(c => c.Name).ToListAsync(ct);
        return new PlanInputsView
        {
            Lines = [.. chains.Select(c => c.Line).Distinct().Order(StringComparer.Ordinal)],
            ChainTypes = [.. chains.Select(PlanQuery.TypeOf).Distinct().Order(StringComparer.Ordinal)],
            Rules = await db.WindowRules.AsNoTracking().OrderBy(r => r.Line).ThenBy(r => r.FirstStart).ToListAsync(ct),
            Spares = await db.Spares.AsNoTracking().OrderBy(s => s.Designation).ThenBy(s => s.Kind).ToListAsync(ct),
            Costs = await db.PlanningCosts.AsNoTracking().OrderBy(c => c.Id).FirstOrDefaultAsync(ct) ?? PlanRows.UsualCosts(),
            LineCosts = await db.LineCosts.AsNoTracking().OrderBy(l => l.Line).ToListAsync(ct),
            Chains = [.. chains.Select(c => c.Name)],
            Groups = [.. from t in await db.SwapTerms.AsNoTracking().Where(t => t.ParallelGroup != "").ToListAsync(ct)
                         join c in chains on t.ChainId equals c.Id
                         orderby c.Line, t.ParallelGroup, c.Name
                         select (c.Name, c.Line, t.ParallelGroup)],
            Time = await clock.NowAsync(ct),
        };
    }

    /// <summary>Adds shutdowns; one with a key that is known takes the place of what came before.</summary>
    public async Task AddAsync(IReadOnlyList<WindowRule> rules, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        foreach (var rule in rules)
        {
            var row = await db.WindowRules.FirstOrDefaultAsync(r => r.Key == rule.Id, ct);
            if (row is null) db.WindowRules.Add(row = new WindowRuleRow { Key = rule.Id, Line = rule.Line });
            (row.Line, row.FirstStart, row.LengthH, row.Recurrence) = (rule.Line, rule.FirstStart, rule.Length.TotalHours, rule.Recurrence);
            (row.Exceptions, row.Crew, row.CrewHours) = (rule.Exceptions, rule.Crew, rule.CrewHours);
        }

        await db.SaveChangesAsync(ct);
    }

    public async Task RemoveRuleAsync(int id, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        await db.WindowRules.Where(r => r.Id == id).ExecuteDeleteAsync(ct);
    }

    /// <summary>Lets one start of a recurring shutdown fall out.</summary>
    public async Task ExceptAsync(int id, DateOnly day, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        var rule = await db.WindowRules.SingleAsync(r => r.Id == id, ct);
        rule.Exceptions = [.. rule.Exceptions.Append(day.ToDateTime(TimeOnly.FromDateTime(rule.FirstStart))).Distinct().Order()];
        await db.SaveChangesAsync(ct);
    }

    /// <summary>Writes down a part's stock; the part is added when it is not on record.</summary>
    public async Task SaveAsync(Spare spare, IReadOnlyList<SpareDelivery> onOrder, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        var kind = spare.Part.Kind.ToString();
        var row = await db.Spares.FirstOrDefaultAsync(s => s.Kind == kind && s.Designation == spare.Part.Designation, ct);
        if (row is null) db.Spares.Add(row = new SpareRow { Kind = kind, Designation = spare.Part.Designation });
        (row.InStock, row.LeadDays, row.PackSize, row.Price) = (spare.InStock, (int)spare.LeadTime.TotalDays, spare.PackSize, spare.Price);
        row.OnOrder = onOrder;
        await db.SaveChangesAsync(ct);
    }

    public async Task RemoveSpareAsync(int id, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        await db.Spares.Where(s => s.Id == id).ExecuteDeleteAsync(ct);
    }

    public async Task SaveAsync(PlanningCostsRow costs, IReadOnlyList<LineCostRow> lines, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        await db.PlanningCosts.ExecuteDeleteAsync(ct);
        await db.LineCosts.ExecuteDeleteAsync(ct);
        db.PlanningCosts.Add(costs);
        db.LineCosts.AddRange(lines);
        await db.SaveChangesAsync(ct);
    }

    /// <summary>Puts chains of a line into one group that is swapped together; an empty group takes a chain out.</summary>
    public async Task GroupAsync(string chain, string group, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        var id = await db.Chains.Where(c => c.Name == chain).Select(c => c.Id).SingleAsync(ct);
        var terms = await db.SwapTerms.FirstOrDefaultAsync(t => t.ChainId == id, ct);
        if (terms is null) db.SwapTerms.Add(terms = new SwapTermsRow { ChainId = id });
        terms.ParallelGroup = group.Trim();
        await db.SaveChangesAsync(ct);
    }
}
