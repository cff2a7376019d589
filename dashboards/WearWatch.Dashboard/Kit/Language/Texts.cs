using System.Globalization;
using Microsoft.Extensions.Localization;

namespace WearWatch.Dashboard.Kit.Language;

/// <summary>
/// The texts of the screens in the language of the person. The English text is the key, so code reads as the screen does, and a
/// text without translation is shown in English; a test finds it.
/// </summary>
public sealed class Texts : IStringLocalizer
{
    /// <summary>The text in the language of what is drawn now.</summary>
    public string this[string english] => Translated(english);

    /// <summary>The phrase in the language of what is drawn now, with its figures as that language writes them.</summary>
    public string this[Phrase phrase] => phrase.In(Translated, CultureInfo.CurrentCulture);

    LocalizedString IStringLocalizer.this[string name] => Found(name, Translated(name));

    LocalizedString IStringLocalizer.this[string name, params object[] arguments] =>
        Found(name, string.Format(CultureInfo.CurrentCulture, Translated(name), arguments));

    /// <inheritdoc/>
    public IEnumerable<LocalizedString> GetAllStrings(bool includeParentCultures) =>
        Tongue.Now.Texts.Select(t => new LocalizedString(t.Key, t.Value));

    private static string Translated(string english) => Tongue.Now.Text(english);

    private static LocalizedString Found(string name, string text) =>
        new(name, text, Tongue.Now != Tongue.English && !Tongue.Now.Texts.ContainsKey(name));
}
