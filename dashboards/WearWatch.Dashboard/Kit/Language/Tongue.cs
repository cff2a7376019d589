using System.Collections.Frozen;
using System.Globalization;
using System.Text.Json;

namespace WearWatch.Dashboard.Kit.Language;

/// <summary>A language of the screens: its folder under <c>Languages/</c>.</summary>
/// <param name="Code">Its ISO 639-1 code, the folder's name.</param>
/// <param name="Name">Its own name for itself.</param>
/// <param name="Paper">The size of paper for prints.</param>
/// <param name="TypedDay">How a person types a day, such as <c>d.M.yyyy</c>.</param>
/// <param name="Culture">How it writes numbers and dates.</param>
/// <param name="Texts">Its texts by the English ones; empty for English.</param>
public sealed record Tongue(
    string Code, string Name, string Paper, string TypedDay, CultureInfo Culture, FrozenDictionary<string, string> Texts)
{
    private const string Root = "Languages/";
    private const string Figures = "culture.json";
    private static readonly JsonSerializerOptions read = new(JsonSerializerDefaults.Web)
    {
        Converters = { new System.Text.Json.Serialization.JsonStringEnumConverter() },
    };

    /// <summary>All, by code: English first.</summary>
    public static IReadOnlyList<Tongue> All { get; } =
        In(typeof(Tongue).Assembly.GetManifestResourceNames(), typeof(Tongue).Assembly.GetManifestResourceStream);

    /// <summary>English.</summary>
    public static Tongue English => All[0];

    /// <summary>
    /// The language of those who develop: every text longer, with accents and in brackets, so that one without is seen to come
    /// from
    /// elsewhere. It is had by its code alone; no list offers it.
    /// </summary>
    public static Tongue Pseudo { get; } = Pseudonym(English);

    /// <summary>The language of what is drawn now.</summary>
    public static Tongue Now => Of(CultureInfo.CurrentUICulture.Name) ?? English;

    /// <summary>A text or a form in this language; the English one where it has none.</summary>
    public string Text(string english) =>
        this == Pseudo ? PseudoText.Of(english) : Texts.GetValueOrDefault(english, english);

    /// <summary>The language of a code or of a tag such as <c>de-AT</c>; null when there is none.</summary>
    public static Tongue? Of(string? tag) => tag is null ? null : All.Append(Pseudo).FirstOrDefault(
        l => tag.StartsWith(l.Code, StringComparison.OrdinalIgnoreCase)
            && (tag.Length == l.Code.Length || tag[l.Code.Length] == '-'));

    private static Tongue Pseudonym(Tongue like)
    {
        var culture = new CultureInfo("qps");
        (culture.NumberFormat, culture.DateTimeFormat) = (like.Culture.NumberFormat, like.Culture.DateTimeFormat);
        return like with { Code = culture.Name, Name = PseudoText.Of(like.Name), Culture = CultureInfo.ReadOnly(culture) };
    }

    /// <summary>The languages of files: each folder under <c>Languages/</c> that says how it writes figures is one.</summary>
    /// <param name="names">The files, such as <c>Languages/de/common.json</c>.</param>
    /// <param name="open">Opens one.</param>
    public static IReadOnlyList<Tongue> In(IReadOnlyCollection<string> names, Func<string, Stream?> open) =>
    [
        .. names.Where(n => n.StartsWith(Root, StringComparison.Ordinal) && IsFigures(n))
            .Select(n => n[Root.Length..^(Figures.Length + 1)])
            .OrderBy(code => code != "en").ThenBy(code => code, StringComparer.Ordinal)
            .Select(code => Read(code, names, open)),
    ];

    private static bool IsFigures(string name) => name.EndsWith("/" + Figures, StringComparison.Ordinal);

    private static Tongue Read(string code, IReadOnlyCollection<string> names, Func<string, Stream?> open)
    {
        var figures = Parse<CultureFigures>(Root + code + "/" + Figures, open);
        var texts = names.Where(n => n.StartsWith($"{Root}{code}/", StringComparison.Ordinal) && !IsFigures(n))
            .SelectMany(n => Parse<Dictionary<string, string>>(n, open)).ToFrozenDictionary();
        return new Tongue(code, figures.Name, figures.Paper, figures.TypedDayPattern, figures.ToCulture(code), texts);
    }

    private static T Parse<T>(string name, Func<string, Stream?> open)
    {
        using var stream = open(name)!;
        return JsonSerializer.Deserialize<T>(stream, read)
            ?? throw new InvalidDataException($"The language file {name} is empty.");
    }
}
