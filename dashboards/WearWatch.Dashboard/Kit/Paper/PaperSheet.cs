using PdfSharp;
using PdfSharp.Drawing;
using PdfSharp.Fonts;
using PdfSharp.Pdf;
using WearWatch.Dashboard.Kit.Charts;
using WearWatch.Dashboard.Kit.Language;

namespace WearWatch.Dashboard.Kit.Paper;

/// <summary>What is printed: on the paper of the language, upright, its font inside, flowing from page to page.</summary>
internal sealed class PaperSheet : IDisposable
{
    private const double Margin = 42;
    private const double NameWidth = 165;
    private const double Pad = 4;

    /// <summary>A sentence of so many lines is not broken over two pages.</summary>
    private const int LinesTogether = 4;

    private static readonly Lock FontSetting = new();

    private readonly PdfDocument document = new();
    private readonly XFont text = new(SheetFont.Family, 9);
    private readonly XFont bold = new(SheetFont.Family, 9, XFontStyleEx.Bold);
    private readonly XFont heading = new(SheetFont.Family, 11, XFontStyleEx.Bold);
    private readonly XPen line = new(XColors.Gray, 0.6);
    private XGraphics page = null!;
    private double width;
    private double bottom;
    private double y;

    private PaperSheet()
    {
        // PDFsharp 6.2 leaves the checksum out that ends a compressed stream (RFC 1950); strict readers warn of it.
        (document.Options.NoCompression, document.Options.CompressContentStreams) = (true, false);
        NewPage();
    }

    /// <summary>The file of a sheet that was drawn.</summary>
    public static byte[] Write(string title, Action<PaperSheet> draw)
    {
        lock (FontSetting) GlobalFontSettings.FontResolver ??= new SheetFont();
        using var sheet = new PaperSheet();
        sheet.document.Info.Title = title;
        draw(sheet);
        using var file = new MemoryStream();
        sheet.page.Dispose();
        sheet.document.Save(file, false);
        return file.ToArray();
    }

    /// <summary>What follows begins on a page of its own.</summary>
    public void TurnPage() => NewPage();

    /// <summary>What stands on top.</summary>
    public void Title(string words) => Flow(words, new XFont(SheetFont.Family, 15, XFontStyleEx.Bold), 6);

    /// <summary>A heading, never alone at the foot of a page.</summary>
    public void Heading(string words)
    {
        y += 6;
        Room(4 * text.GetHeight());
        Flow(words, heading, 3);
    }

    public void Paragraph(string words, double after = 2) => Flow(words, text, after);

    public void Strong(string words) => Flow(words, bold, 3);

    /// <summary>A name with its value, or with room to write it in.</summary>
    public void Row(string name, string value, double least = 0) =>
        Cells([(name, bold, NameWidth, false), (value, text, width - NameWidth, false)], least);

    /// <summary>A table: the first column wider than the others; figures stand at the right.</summary>
    public void Table(IReadOnlyList<string> head, IReadOnlyList<IReadOnlyList<string>> rows, bool figures)
    {
        var first = figures ? 0.34 * width : width / head.Count;
        double Wide(int column) => column == 0 ? first : (width - first) / (head.Count - 1);
        Cells([.. head.Select((cell, i) => (cell, bold, Wide(i), figures && i > 0))], 0);
        foreach (var row in rows) Cells([.. row.Select((cell, i) => (cell, text, Wide(i), figures && i > 0))], 0);
        y += 3;
    }

    /// <summary>A picture as wide as the text, on one page with its words.</summary>
    public void Picture(Drawing drawing)
    {
        var height = width * drawing.Frame.Height / drawing.Frame.Width;
        Room(height);
        PaperDrawing.Draw(page, drawing, new XPoint(Margin, y), width);
        y += height + 3;
    }

    public void Dispose()
    {
        page.Dispose();
        document.Dispose();
    }

    private void Flow(string words, XFont font, double after)
    {
        var pieces = Wrap(words, font, width);
        if (pieces.Count <= LinesTogether) Room(pieces.Count * font.GetHeight());
        foreach (var piece in pieces)
        {
            Room(font.GetHeight());
            page.DrawString(piece, font, XBrushes.Black, new XPoint(Margin, y + font.GetHeight() * 0.8));
            y += font.GetHeight();
        }

        y += after;
    }

    private void Cells(IReadOnlyList<(string Words, XFont Font, double Width, bool AtRight)> cells, double least)
    {
        var pieces = cells.Select(c => Wrap(c.Words, c.Font, c.Width - 2 * Pad)).ToList();
        var height = Math.Max(least, pieces.Max(p => p.Count) * text.GetHeight() + 2 * Pad);
        Room(height);
        var x = Margin;
        foreach (var (cell, words) in cells.Zip(pieces))
        {
            page.DrawRectangle(line, x, y, cell.Width, height);
            for (var i = 0; i < words.Count; i++)
            {
                var at = cell.AtRight ? x + cell.Width - Pad - page.MeasureString(words[i], cell.Font).Width : x + Pad;
                page.DrawString(words[i], cell.Font, XBrushes.Black, new XPoint(at, y + Pad + (i + 0.8) * text.GetHeight()));
            }

            x += cell.Width;
        }

        y += height;
    }

    private List<string> Wrap(string words, XFont font, double into)
    {
        var lines = new List<string> { "" };
        foreach (var word in words.Split(' '))
        {
            var longer = lines[^1].Length == 0 ? word : $"{lines[^1]} {word}";
            if (page.MeasureString(longer, font).Width <= into || lines[^1].Length == 0) lines[^1] = longer;
            else lines.Add(word);
        }

        return lines;
    }

    private void Room(double height)
    {
        if (y + height > bottom) NewPage();
    }

    private void NewPage()
    {
        page?.Dispose();
        var sheet = document.AddPage();
        sheet.Size = Enum.Parse<PageSize>(Tongue.Now.Paper);
        page = XGraphics.FromPdfPage(sheet);
        (width, bottom, y) = (sheet.Width.Point - 2 * Margin, sheet.Height.Point - Margin, Margin);
    }
}
