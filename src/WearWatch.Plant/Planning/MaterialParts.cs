using WearWatch.Planning.Supply;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Planning;

/// <summary>The parts that another system names: as the work package calls them, or by their numbers in the store.</summary>
/// <param name="Needs">Those that are known.</param>
/// <param name="Unknown">What no part is called.</param>
internal sealed record MaterialParts(IReadOnlyList<PartNeed> Needs, IReadOnlyList<string> Unknown)
{
    /// <summary>Finds the parts.</summary>
    /// <param name="used">What was told.</param>
    /// <param name="chain">The chain for which it was used.</param>
    /// <param name="spares">The parts on record.</param>
    public static MaterialParts Find(
        IReadOnlyList<MaterialUsed> used, ChainRow chain, IReadOnlyList<SpareRow> spares)
    {
        Part[] own = [.. AfterStopDesk.PartsOf(chain, null, withSprockets: true).Select(n => n.Part)];
        var byName = new Dictionary<string, Part>(StringComparer.OrdinalIgnoreCase);
        foreach (var part in spares.Select(PlanRows.ToPart).Concat(own)) byName[part.ToString()] = part;
        Number(chain.StoreNumber, PartKind.Chain);
        Number(chain.SprocketNumber, PartKind.Sprocket);
        var known = used.ToLookup(m => byName.ContainsKey(m.Part.Trim()));
        return new MaterialParts(
            [.. known[true].GroupBy(m => byName[m.Part.Trim()]).Select(g => new PartNeed(g.Key, g.Sum(m => m.Quantity)))],
            [.. known[false].Select(m => m.Part)]);

        // A number that could mean two parts, such as sprockets of other teeth, means none.
        void Number(string number, PartKind kind)
        {
            var meant = own.Where(p => p.Kind == kind).Distinct().ToArray();
            if (number.Length > 0 && meant is [var only]) byName.TryAdd(number, only);
        }
    }
}
