using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Plant.Files;
using WearWatch.Plant.Register;
using WearWatch.Storage;
using WearWatch.Storage.Engines;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Intake;

/// <summary>Takes rows of the register in: a chain that is known by its name is changed, another one is added.</summary>
internal sealed class ChainsTaking(ImportRun run, RemarkList remarks, ImportFile file)
{
    private readonly Dictionary<string, int> lines = [];

    public async Task TakeAsync(WearDb db, IReadOnlyList<FileItem> items, CancellationToken ct)
    {
        var chains = items.OfType<FileItem.Chain>().Where(IsFirst).ToList();
        var names = chains.Select(c => c.Card.Name).ToList();
        var stored = await db.Chains.Where(c => EF.Parameter(names).Contains(c.Name)).ToDictionaryAsync(c => c.Name, ct);
        var changed = new List<(ChainRow Row, ChainCard? Before, int Line)>();
        foreach (var (line, card) in chains)
        {
            var row = stored.GetValueOrDefault(card.Name);
            if (row is not null && SaysNothingNew(row, card))
            {
                remarks.AlreadyKnown++;
                continue;
            }

            if (row?.HoldsLoad == true && !card.HoldsLoad)
            {
                remarks.Add(line, "lifts",
                    $"It lifts or holds a load: only a planner takes that from its master data, with the reason; "
                    + $"a file does not.",
                    RemarkKind.Refused);
                continue;
            }

            remarks.Taken++;
            run.Cards[card.Name] = card;
            if (!run.Stores) continue;
            var before = row?.ToCard();
            if (row is null) db.Chains.Add(row = new ChainRow { Name = card.Name });
            row.Take(card);
            changed.Add((row, before, line));
        }

        if (!run.Stores) return;
        await db.SaveChangesAsync(ct);
        await db.AddManyAsync([.. changed.SelectMany(c => CardChanges.Of(
            c.Row.Id, c.Before, c.Row.ToCard(), file.Maker(c.Line), "", run.Now))], ct);
        foreach (var (row, _, _) in changed)
        {
            run.Know(row);
            run.Changed.Add(row.Id);
        }
    }

    private bool IsFirst(FileItem.Chain chain)
    {
        if (lines.TryAdd(chain.Card.Name, chain.Line)) return true;
        remarks.Add(
            chain.Line, "chain", $"The chain '{chain.Card.Name}' stands already in line {lines[chain.Card.Name]}.",
            RemarkKind.Refused);
        return false;
    }

    private static bool SaysNothingNew(ChainRow row, ChainCard card) => !CardChanges.Between(row.ToCard(), card).Any();
}
