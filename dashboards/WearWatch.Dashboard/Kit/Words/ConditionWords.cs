using System.Diagnostics;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Kit.Words;

/// <summary>The four conditions in the words, tokens and order that every screen uses.</summary>
public static class ConditionWords
{
    /// <summary>The conditions, the one that needs a person first.</summary>
    public static IReadOnlyList<Condition> MostUrgentFirst { get; } =
        [Condition.SwapNow, Condition.PlanASwap, Condition.WithinLimit, Condition.NotKnown];

    /// <summary>The condition in words.</summary>
    public static string Of(Condition condition) => condition switch
    {
        Condition.WithinLimit => "within limit",
        Condition.PlanASwap => "plan a swap",
        Condition.SwapNow => "swap now",
        Condition.NotKnown => "not known",
        _ => throw new UnreachableException($"Condition {condition} has no words."),
    };

    /// <summary>The condition in an address or a class name, such as <c>plan-a-swap</c>.</summary>
    public static string Token(Condition condition) => Of(condition).Replace(' ', '-');

    /// <summary>The condition of a token; null when there is none of that name.</summary>
    public static Condition? FromToken(string? token)
    {
        foreach (var condition in MostUrgentFirst)
            if (string.Equals(Token(condition), token, StringComparison.OrdinalIgnoreCase)) return condition;
        return null;
    }

    /// <summary>What the condition asks for.</summary>
    public static string Meaning(Condition condition) => condition switch
    {
        Condition.WithinLimit => "Normal: nothing to do but the next reading.",
        Condition.PlanASwap => "Attention: the limit comes near; book a swap.",
        Condition.SwapNow => "Act now: the limit has been passed, or may be any day.",
        Condition.NotKnown => "No reading tells enough of the chain that runs now: measure it.",
        _ => throw new UnreachableException($"Condition {condition} has no meaning."),
    };
}
