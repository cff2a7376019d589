using System.Text.RegularExpressions;
using WearWatch.Units;

namespace WearWatch.Gauging;

/// <summary>
/// A length from pin to pin as people write it: plain, or by caliper inside and outside of the same end rollers.
/// </summary>
public static partial class MeasuredLengthText
{
    /// <summary>Two lengths over rollers as they are kept: <c>258.6 inside 282.4 outside</c>.</summary>
    public static string OverRollers(string inside, string outside) => $"{inside.Trim()} inside {outside.Trim()} outside";

    /// <summary>
    /// Reads what <see cref="LengthText.Read"/> does, and <c>258.6 inside 282.4 outside mm</c>, whose mean is the length.
    /// </summary>
    /// <param name="text">What was written.</param>
    /// <param name="expected">The unit of a plain number.</param>
    public static LengthText Read(string? text, LengthUnit expected)
    {
        var match = Shape().Match(text ?? "");
        if (!match.Success) return LengthText.Read(text, expected);
        var inside = LengthText.Read(match.Groups["inside"].Value + match.Groups["unit"].Value, expected);
        var outside = LengthText.Read(match.Groups["outside"].Value + match.Groups["unit"].Value, expected);
        if (inside is not LengthText.Understood within) return inside;
        if (outside is not LengthText.Understood over) return outside;
        if (within.WrittenIn != over.WrittenIn)
            return new LengthText.NotUnderstood($"Inside and outside are in different units; write both in one.");
        return over.Length.Millimetres > within.Length.Millimetres
            ? within with { Length = new(MeasuredSpan.OverRollersMm(within.Length.Millimetres, over.Length.Millimetres)) }
            : new LengthText.NotUnderstood($"Over the rollers is more than between them: {over.Length.Millimetres:0.##} mm "
                + $"outside, "
                + $"{within.Length.Millimetres:0.##} mm inside cannot be.");
    }

    [GeneratedRegex(@"^\s*(?<inside>.+?)\s+inside,?\s+(?<outside>.+?)\s+outside(?<unit>\s+\w+)?\s*$", RegexOptions.IgnoreCase)]
    private static partial Regex Shape();
}
