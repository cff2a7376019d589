using WearWatch.Dashboard.Kit.Words;
using WearWatch.Plant.Register;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Administration.Register;

/// <summary>A change of a card in words.</summary>
public static class CardChangeLine
{
    /// <summary>What was changed, from what to what.</summary>
    public static Phrase Words(CardChangeRow change) => change.Field == CardChanges.Entry ? Phrase.Of($"taken into the register")
        : CardField.Of(change.Field) is not { } field ? Phrase.Of($"{change.Field}: {change.From} to {change.To}")
        : $"{T[field.Asked.Name].Split(':')[0]}: {field.Said(change.From)} to {field.Said(change.To)}";
}
