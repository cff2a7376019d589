using System.Globalization;

namespace WearWatch.Dashboard.Kit.Language;

/// <summary>What is made of a day as a person types it: the one rule of all desk pages.</summary>
/// <remarks>
/// Read are the form of the language, the form in which it shows dates, and ISO 8601. Nothing is guessed: <c>3/4/2026</c> is
/// read only in a language in which one day can be meant by it.
/// </remarks>
public static class TypedDay
{
    private const string Iso = "yyyy-MM-dd";

    /// <summary>A day as it stands in a field, so that it reads back; empty for none.</summary>
    public static string Text(DateOnly? day) => day?.ToString(Tongue.Now.TypedDay, CultureInfo.CurrentCulture) ?? "";

    /// <summary>A day as the browser's calendar writes it; empty for none.</summary>
    public static string IsoText(DateOnly? day) => day?.ToString(Iso, CultureInfo.InvariantCulture) ?? "";

    /// <summary>The day that a text means; null where it means none.</summary>
    public static DateOnly? Of(string? text)
    {
        var typed = (text ?? "").Trim();
        var culture = CultureInfo.CurrentCulture;
        if (DateOnly.TryParseExact(typed, Iso, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)) return day;
        string[] forms = [Tongue.Now.TypedDay, culture.DateTimeFormat.LongDatePattern, "d MMMM yyyy", "d. MMMM yyyy"];
        return DateOnly.TryParseExact(typed, forms, culture, DateTimeStyles.AllowWhiteSpaces, out day) ? day : null;
    }

    /// <summary>What is wrong with a text, with the day given as an example.</summary>
    public static Phrase Fault(string text, DateOnly example) => $"'{text}' is no day. Write it as {Text(example)}.";
}
