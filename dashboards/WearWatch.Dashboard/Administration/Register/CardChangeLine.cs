using WearWatch.Chains.Families;
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Plant.Register;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Administration.Register;

/// <summary>A change of a card in words.</summary>
public static class CardChangeLine
{
    /// <summary>What was changed, from what to what.</summary>
    public static string Words(CardChangeRow change) => change.Field == CardChanges.Entry ? "taken into the register"
        : CardField.Of(change.Field) is not { } field ? $"{change.Field}: {change.From} to {change.To}"
        : $"{field.Name.Split(':')[0]}: {field.Said(From(change))} to {field.Said(To(change))}";

    // A file leaves the family out where it is the usual one.
    private static string From(CardChangeRow change) => Usual(change.Field, change.From);

    private static string To(CardChangeRow change) => Usual(change.Field, change.To);

    private static string Usual(string field, string text) => (field, text) switch
    {
        ("family", "") => ChainFamily.Usual.Name,
        ("strands", "") or ("oiling_surroundings_factor", "") => "1",
        _ => text,
    };
}
