using PdfSharp.Fonts;

namespace WearWatch.Dashboard.Kit.Paper;

/// <summary>The one font family of what is printed, out of this assembly: a server has none of its own.</summary>
internal sealed class SheetFont : IFontResolver
{
    public const string Family = "DejaVu Sans";

    public FontResolverInfo ResolveTypeface(string familyName, bool isBold, bool isItalic) =>
        new(isBold ? "DejaVuSans-Bold" : "DejaVuSans");

    public byte[] GetFont(string faceName)
    {
        using var font = typeof(SheetFont).Assembly.GetManifestResourceStream(faceName)
            ?? throw new InvalidOperationException($"The font {faceName} is not inside the program.");
        using var copy = new MemoryStream();
        font.CopyTo(copy);
        return copy.ToArray();
    }
}
