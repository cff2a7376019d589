using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using PdfSharp.Pdf;
using PdfSharp.Pdf.Content;
using PdfSharp.Pdf.Content.Objects;
using PdfSharp.Pdf.IO;

namespace WearWatch.Dashboard.Tests.Lifting;

/// <summary>The text of a file that is meant for paper or for a spreadsheet, as a person reads it.</summary>
internal static partial class PaperText
{
    /// <summary>The text of a PDF, piece by piece in the order in which it is drawn.</summary>
    /// <remarks>Its fonts are inside, with the table from glyphs to characters (ISO 32000-1, 9.10.3).</remarks>
    public static string OfPdf(byte[] file) => string.Concat(OfPages(file));

    /// <summary>The same, page by page.</summary>
    public static IReadOnlyList<string> OfPages(byte[] file)
    {
        using var document = PdfReader.Open(new MemoryStream(file), PdfDocumentOpenMode.Import);
        var pages = new List<string>();
        foreach (var page in document.Pages)
        {
            var text = new StringBuilder();
            Dictionary<char, string>? characters = null;
            var fonts = page.Resources.Elements.GetDictionary("/Font");
            foreach (var step in ContentReader.ReadContent(page).OfType<COperator>())
            {
                if (step.OpCode.OpCodeName == OpCodeName.Tf)
                    characters = Characters(fonts!.Elements.GetDictionary(((CName)step.Operands[0]).Name)!);
                foreach (var drawn in step.Operands.OfType<CString>().Where(_ => step.OpCode.OpCodeName == OpCodeName.Tj))
                    text.Append(characters is null ? drawn.Value
                        : string.Concat(Glyphs(drawn).Select(glyph => characters.GetValueOrDefault(glyph, "?")))).Append(' ');
            }

            pages.Add(text.ToString());
        }

        return pages;
    }

    /// <summary>The text of a spreadsheet (ISO/IEC 29500-1), cell by cell.</summary>
    public static string OfSheet(byte[] file)
    {
        using var parts = new ZipArchive(new MemoryStream(file));
        return string.Join('\n', parts.Entries.Where(e => e.FullName.StartsWith("xl/worksheets/", StringComparison.Ordinal)
            || e.Name == "sharedStrings.xml").SelectMany(e =>
            {
                using var part = e.Open();
                return XDocument.Load(part).Descendants().Where(x => x.Name.LocalName == "t").Select(x => x.Value).ToList();
            }));
    }

    /// <summary>Two bytes a glyph.</summary>
    private static IEnumerable<char> Glyphs(CString drawn)
    {
        for (var i = 0; i + 1 < drawn.Value.Length; i += 2) yield return (char)((drawn.Value[i] << 8) | drawn.Value[i + 1]);
    }

    /// <summary>What its glyphs stand for; null for a font that is written by the byte, as Windows does.</summary>
    private static Dictionary<char, string>? Characters(PdfDictionary font)
    {
        if (font.Elements.GetDictionary("/ToUnicode")?.Stream is not { } table) return null;
        var map = Encoding.ASCII.GetString(table.UnfilteredValue);
        return Ranges().Matches(map).SelectMany(m =>
        {
            var (from, to, at) = (Hex(m.Groups[1].Value), Hex(m.Groups[2].Value), Hex(m.Groups[3].Value));
            return Enumerable.Range(0, to - from + 1).Select(i => ((char)(from + i), $"{(char)(at + i)}"));
        }).DistinctBy(pair => pair.Item1).ToDictionary(pair => pair.Item1, pair => pair.Item2);
    }

    private static int Hex(string digits) => int.Parse(digits, NumberStyles.HexNumber, CultureInfo.InvariantCulture);

    [GeneratedRegex("<([0-9A-Fa-f]{4})>\\s*<([0-9A-Fa-f]{4})>\\s*<([0-9A-Fa-f]{4})>")]
    private static partial Regex Ranges();
}
