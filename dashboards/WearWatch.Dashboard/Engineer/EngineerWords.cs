using System.Globalization;
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Lives;

namespace WearWatch.Dashboard.Engineer;

/// <summary>What only the engineer's pages have to say in words.</summary>
public static class EngineerWords
{
    /// <summary>A count of lives: 1 life, 2 lives.</summary>
    public static Phrase Lives(int count) => Phrase.Counted(count, $"{count:#,0} life", $"{count:#,0} lives");

    /// <summary>A figure with the decimals that it has, two at most.</summary>
    public static string Figure(double value) => value.ToString("0.##", CultureInfo.CurrentCulture);

    /// <summary>A number of swaps.</summary>
    public static Phrase Swaps(int count) => Phrase.Counted(count, $"{count:#,0} swap", $"{count:#,0} swaps");

    /// <summary>A number of chains.</summary>
    public static Phrase Chains(int count) => Phrase.Counted(count, $"{count:#,0} chain", $"{count:#,0} chains");

    /// <summary>A share such as 89.5 %.</summary>
    public static string Share(double fraction) =>
        double.IsNaN(fraction) ? Show.Nothing : (100 * fraction).ToString("0.0", CultureInfo.CurrentCulture) + " %";

    /// <summary>A band of shares such as 84 to 93 %.</summary>
    public static Phrase Band(ConfidenceInterval band) =>
        $"{100 * band.Low:0} to {100 * band.High:0} %";

    /// <summary>A relative error with its sign, such as +4.2 %.</summary>
    public static string Error(double relative) =>
        double.IsNaN(relative) ? Show.Nothing : (100 * relative).ToString("+0.0;-0.0;0.0", CultureInfo.CurrentCulture) + " %";

    /// <summary>A factor such as × 1.45.</summary>
    public static string Factor(double factor) =>
        "× " + factor.ToString(factor < 10 ? "0.00" : "0.0", CultureInfo.CurrentCulture);

    /// <summary>A text with its first letter as a capital.</summary>
    public static string Capital(string text) => text.Length == 0 ? text : text[..1].ToUpperInvariant() + text[1..];
}
