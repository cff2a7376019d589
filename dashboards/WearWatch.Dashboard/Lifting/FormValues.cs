using System.Globalization;
using WearWatch.Dashboard.Kit.Language;
using WearWatch.Plant.Settings;

namespace WearWatch.Dashboard.Lifting;

/// <summary>What is wrong with each field of a form, and what its texts mean.</summary>
public sealed class FormValues
{
    private readonly Dictionary<string, string> faults = [];

    /// <summary>Whether nothing is wrong.</summary>
    public bool IsFine => faults.Count == 0;

    /// <summary>What is wrong with a field; null for nothing.</summary>
    public string? this[string field] => faults.GetValueOrDefault(field);

    /// <summary>What is wrong with fields that stand on no form of their own.</summary>
    public string All => string.Join(" ", faults.Values.Distinct());

    public void Clear() => faults.Clear();

    public void Add(string field, string reason) => faults[field] = faults.TryGetValue(field, out var first)
        ? $"{first} {reason}"
        : reason;

    /// <summary>What a desk refused.</summary>
    public void Add(IEnumerable<Refusal> refusals)
    {
        foreach (var refusal in refusals) Add(refusal.Field, T[refusal.Reason]);
    }

    /// <summary>A number; null for an empty text.</summary>
    public double? Number(string field, string text)
    {
        if (string.IsNullOrWhiteSpace(text)) return null;
        if (TypedNumber.Of(text) is { } number) return number;
        Add(field, TypedNumber.Fault(text, $"A number such as 1500."));
        return null;
    }

    /// <summary>A whole number; null for an empty text.</summary>
    public int? Whole(string field, string text)
    {
        if (string.IsNullOrWhiteSpace(text)) return null;
        if (TypedNumber.WholeOf(text) is { } number) return number;
        Add(field, TypedNumber.Fault(text, $"A whole number."));
        return null;
    }

    /// <summary>A day as files have it.</summary>
    public static string Text(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "";
}
