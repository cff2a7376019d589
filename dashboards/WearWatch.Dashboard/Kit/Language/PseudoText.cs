using System.Text;

namespace WearWatch.Dashboard.Kit.Language;

/// <summary>The text of the pseudo-language: <c>⟦Şàvé ~⟧</c> for Save. Holes stay.</summary>
internal static class PseudoText
{
    /// <summary>Around each text, so that what stands outside of the brackets is seen.</summary>
    public const char Opens = '\u27E6', Closes = '\u27E7';

    // A right-to-left mark: a screen that is right by its order of letters alone shows it.
    private const char Mark = '\u200F';
    private const string Plain = "aceginosuyACEINOSUY";
    private const string Accented = "\u00E0\u00E7\u00E9\u011D\u00EF\u00F1\u00F4\u0161\u00FB\u00FD"
        + "\u00C0\u00C7\u00C9\u00CF\u00D1\u00D4\u0160\u00DB\u00DD";

    /// <summary>The English text with accents, about a third longer, in brackets.</summary>
    public static string Of(string english)
    {
        var text = new StringBuilder().Append(Opens);
        var isHole = false;
        foreach (var letter in english)
        {
            isHole = letter == '{' || (isHole && letter != '}');
            var at = isHole ? -1 : Plain.IndexOf(letter, StringComparison.Ordinal);
            text.Append(at < 0 ? letter : Accented[at]);
        }

        return text.Append(Mark).Append('~', english.Length / 3).Append(Closes).ToString();
    }
}
