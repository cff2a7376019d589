using Microsoft.EntityFrameworkCore;
using WearWatch.Chains.Families;
using WearWatch.Planning.Supply;
using WearWatch.Planning.Windows;
using WearWatch.Plant.Costs;
using WearWatch.Plant.Settings;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Planning;

/// <summary>Reads and changes what a person gives the planner: shutdowns, the store, what swaps take, costs.</summary>
public sealed class PlanInputs(IDbContextFactory<WearDb> databases, PlantClock clock)
{
    /// <summary>All of it.</summary>
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
            Costs = await db.PlanningCosts.AsNoTracking().OrderBy(c => c.Id).FirstOrDefaultAsync(ct) ?? CostRows.Usual(),
            LineCosts = await db.LineCosts.AsNoTracking().OrderBy(l => l.Line).ToListAsync(ct),
            Chains = [.. chains.Select(c => c.Name)],
            Works = WorksOf(chains, await db.SwapWorks.AsNoTracking().ToListAsync(ct)),
            Terms = [.. from t in await db.SwapTerms.AsNoTracking().ToListAsync(ct)
                        where t.ParallelGroup.Length > 0 || t.Hours is not null || t.People is not null || t.WithSprockets
                        join c in chains on t.ChainId equals c.Id
                        orderby c.Line, t.ParallelGroup, c.Name
                        select new SwapTermsLine(c.Name, c.Line, t.ParallelGroup, t.Hours, t.People, t.WithSprockets)],
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
            (row.Line, row.FirstStart, row.LengthH, row.Recurrence) =
                (rule.Line, rule.FirstStart, rule.Length.TotalHours, rule.Recurrence);
            (row.Exceptions, row.Crew, row.CrewHours) = (rule.Exceptions, rule.Crew, rule.CrewHours);
        }

        await db.SaveChangesAsync(ct);
    }

    /// <summary>Takes a shutdown off, with all its starts.</summary>
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
        (row.InStock, row.PackSize, row.Price) = (spare.InStock, spare.PackSize, spare.Price);
        (row.LeadDays, row.ExpressLeadDays) = ((int)spare.LeadTime.TotalDays, (int)spare.ExpressLeadTime.TotalDays);
        row.OnOrder = onOrder;
        await db.SaveChangesAsync(ct);
    }

    /// <summary>Takes a part off the record of the store.</summary>
    public async Task RemoveSpareAsync(int id, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        await db.Spares.Where(s => s.Id == id).ExecuteDeleteAsync(ct);
    }

    /// <summary>Writes down what things cost, and what an hour of a stopped line does where it is another amount.</summary>
    public async Task SaveAsync(PlanningCostsRow costs, IReadOnlyList<LineCostRow> lines, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        await db.PlanningCosts.ExecuteDeleteAsync(ct);
        await db.LineCosts.ExecuteDeleteAsync(ct);
        db.PlanningCosts.Add(costs);
        db.LineCosts.AddRange(lines);
        await db.SaveChangesAsync(ct);
    }

    /// <summary>Writes down what a swap of one chain takes; what is left empty goes by its family and length.</summary>
    public async Task SaveAsync(SwapTermsLine own, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        var id = await db.Chains.Where(c => c.Name == own.Chain).Select(c => c.Id).SingleAsync(ct);
        var terms = await db.SwapTerms.FirstOrDefaultAsync(t => t.ChainId == id, ct);
        if (terms is null) db.SwapTerms.Add(terms = new SwapTermsRow { ChainId = id });
        (terms.ParallelGroup, terms.Hours, terms.People, terms.WithSprockets) =
            (own.Group.Trim(), own.Hours, own.People, own.WithSprockets);
        await db.SaveChangesAsync(ct);
    }

    /// <summary>Writes down what the swaps of a family take.</summary>
    public async Task SaveAsync(ChainFamily family, SwapWork work, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        var row = await db.SwapWorks.FirstOrDefaultAsync(w => w.Family == family, ct);
        if (row is null) db.SwapWorks.Add(row = new SwapWorkRow { Family = family });
        (row.Hours, row.HoursPer100Pitches, row.People) = (work.Hours, work.HoursPer100Pitches, work.People);
        await db.SaveChangesAsync(ct);
    }

    private static IReadOnlyList<SwapWorkLine> WorksOf(IEnumerable<ChainRow> chains, IReadOnlyList<SwapWorkRow> own) =>
        [.. chains.Select(c => c.Family).Distinct().OrderBy(family => family.Place)
            .Select(family => own.FirstOrDefault(w => w.Family == family) is { } row
            ? new SwapWorkLine(family, PlanRows.ToWork(row), IsOwn: true)
            : new SwapWorkLine(family, family.UsualSwap, IsOwn: false))];
}
