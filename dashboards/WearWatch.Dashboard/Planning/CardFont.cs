using PdfSharp.Fonts;

namespace WearWatch.Dashboard.Planning;

/// <summary>The one font family of the job card, out of this assembly: a server has none of its own.</summary>
internal sealed class CardFont : IFontResolver
{
    public const string Family = "DejaVu Sans";

    public FontResolverInfo ResolveTypeface(string familyName, bool isBold, bool isItalic) => new(isBold ? "DejaVuSans-Bold" : "DejaVuSans");

    public byte[] GetFont(string faceName)
    {
        using var font = typeof(CardFont).Assembly.GetManifestResourceStream(faceName)
            ?? throw new InvalidOperationException($"The font {faceName} is not inside the program.");
        using var copy = new MemoryStream();
        font.CopyTo(copy);
        return copy.ToArray();
    }
}
