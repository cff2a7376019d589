using WearWatch.Chains;
using WearWatch.Plant.Files;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Register;

/// <summary>What differs between two states of a chain's card, column by column of chains.csv.</summary>
public static class CardChanges
{
    /// <summary>The field that stands for the chain's entry into the register.</summary>
    public const string Entry = "chain";

    /// <summary>The columns that differ, with what stood and what stands in them.</summary>
    public static IEnumerable<(string Field, string From, string To)> Between(ChainCard before, ChainCard after) =>
        ChainColumns.All
        .Select(column => (Field: column.Name, From: column.Write(before), To: column.Write(after)))
        .Where(change => change.From != change.To);

    /// <summary>The rows that record a change; for a chain that was not in the register one row, its entry.</summary>
    public static IReadOnlyList<CardChangeRow> Of(
        int chainId, ChainCard? before, ChainCard after, string by, string why, DateTimeOffset at)
    {
        (string Field, string From, string To)[] changes = before is null
            ? [(Entry, "", after.Name)]
            : [.. Between(before, after)];
        return [.. changes.Select(change => new CardChangeRow
        {
            ChainId = chainId,
            At = at,
            By = by,
            Field = change.Field,
            From = change.From,
            To = change.To,
            Why = why,
        })];
    }
}
