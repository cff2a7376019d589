using Microsoft.AspNetCore.Components;

namespace WearWatch.Dashboard.Kit.Tables;

/// <summary>A column of a list.</summary>
/// <param name="Key">Its name in the address, which never changes; empty where it has no order, such as one of buttons.</param>
/// <param name="Text">Its head.</param>
/// <param name="By">What the rows are sorted by; null where it has no order.</param>
/// <param name="Class">Its look, such as <c>number</c>.</param>
/// <param name="Head">What stands in place of the text and says as much; null for the text.</param>
public sealed record ListColumn<TRow>(
    string Key, string Text, Func<TRow, IComparable?>? By = null, string Class = "", RenderFragment? Head = null)
{
    /// <summary>A column without an order.</summary>
    public ListColumn(string text)
        : this("", text)
    {
    }

    /// <summary>
    /// What is read in a row where <see cref="By"/> is no text, such as a state; null for the text by which it is sorted.
    /// </summary>
    public Func<TRow, string?>? Words { get; init; }

    /// <summary>Whether its head is heard but not seen, as over buttons that say themselves what they do.</summary>
    public bool IsUnseen { get; init; }

    /// <summary>The text by which a row is found in it; empty for a figure or a date.</summary>
    public string WordsOf(TRow row) => (Words is null ? By?.Invoke(row) as string : Words(row)) ?? "";
}
