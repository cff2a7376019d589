using System.Text.Json;
using WearWatch.Units;

namespace WearWatch.Dashboard.Api;

/// <summary>Enumerations on the wire: the file formats' words, lower case with underscores.</summary>
internal static class Tokens
{
    /// <summary>The word of a value.</summary>
    public static string Of<T>(T value)
        where T : struct, Enum => JsonNamingPolicy.SnakeCaseLower.ConvertName(value.ToString());

    /// <summary>The value of a word; null for none or another.</summary>
    public static T? Read<T>(string? word)
        where T : struct, Enum
    {
        foreach (var value in Enum.GetValues<T>())
            if (string.Equals(Of(value), word, StringComparison.OrdinalIgnoreCase)) return value;
        return null;
    }

    /// <summary>The words of an enumeration, for an error text.</summary>
    public static string All<T>()
        where T : struct, Enum => string.Join(", ", Enum.GetValues<T>().Select(Of));

    /// <summary>The word of a unit of length: <c>mm</c> or <c>in</c>.</summary>
    public static string Of(LengthUnit unit) => unit == LengthUnit.Inch ? "in" : "mm";

    /// <summary>The unit of a length; millimetres when none is told, null for another word.</summary>
    public static LengthUnit? Unit(string? word) => word switch
    {
        null or "mm" => LengthUnit.Millimetre,
        "in" => LengthUnit.Inch,
        _ => null,
    };
}
