using PdfSharp;
using PdfSharp.Drawing;
using PdfSharp.Fonts;
using PdfSharp.Pdf;

namespace WearWatch.Dashboard.Planning;

/// <summary>A job card as PDF: A4, upright, its font inside.</summary>
public sealed class JobCardPdf : IDisposable
{
    private const double Margin = 42;
    private const double NameWidth = 165;
    private const double Pad = 4;

    private static readonly Lock FontSetting = new();

    private readonly PdfDocument document = new();
    private readonly XFont text = new(CardFont.Family, 9);
    private readonly XFont bold = new(CardFont.Family, 9, XFontStyleEx.Bold);
    private readonly XFont heading = new(CardFont.Family, 11, XFontStyleEx.Bold);
    private readonly XPen line = new(XColors.Gray, 0.6);
    private XGraphics page = null!;
    private double width;
    private double bottom;
    private double y;

    private JobCardPdf() => NewPage();

    public static byte[] Write(JobCard card)
    {
        lock (FontSetting) GlobalFontSettings.FontResolver ??= new CardFont();
        using var paper = new JobCardPdf();
        paper.document.Info.Title = $"Job card {card.Chain}";
        paper.Draw(card);
        using var file = new MemoryStream();
        paper.page.Dispose();
        paper.document.Save(file, false);
        return file.ToArray();
    }

    public void Dispose()
    {
        page.Dispose();
        document.Dispose();
    }

    private void Draw(JobCard card)
    {
        Paragraph($"Job card: swap chain {card.Chain}", new XFont(CardFont.Family, 15, XFontStyleEx.Bold), 6);
        foreach (var caution in card.Cautions) Paragraph(caution, bold, 3);
        foreach (var (name, value) in card.Facts) Row(name, value, 0);
        Heading("Tools");
        Paragraph(string.Join("; ", card.Tools) + ".", text, 2);
        Heading("Steps");
        for (var i = 0; i < card.Steps.Count; i++) Paragraph($"{i + 1}.  {card.Steps[i]}", text, 2);
        Heading("Write down");
        foreach (var name in JobCard.ToWrite) Row(name, "", 22);
    }

    private void Heading(string words)
    {
        y += 6;
        Paragraph(words, heading, 3);
    }

    private void Paragraph(string words, XFont font, double after)
    {
        foreach (var piece in Wrap(words, font, width))
        {
            Room(font.GetHeight());
            page.DrawString(piece, font, XBrushes.Black, new XPoint(Margin, y + font.GetHeight() * 0.8));
            y += font.GetHeight();
        }

        y += after;
    }

    private void Row(string name, string value, double least)
    {
        var pieces = Wrap(value, text, width - NameWidth - 2 * Pad);
        var height = Math.Max(least, pieces.Count * text.GetHeight() + 2 * Pad);
        Room(height);
        page.DrawRectangle(line, Margin, y, NameWidth, height);
        page.DrawRectangle(line, Margin + NameWidth, y, width - NameWidth, height);
        page.DrawString(name, bold, XBrushes.Black, new XPoint(Margin + Pad, y + Pad + text.GetHeight() * 0.8));
        for (var i = 0; i < pieces.Count; i++)
            page.DrawString(pieces[i], text, XBrushes.Black, new XPoint(Margin + NameWidth + Pad, y + Pad + (i + 0.8) * text.GetHeight()));
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
        sheet.Size = PageSize.A4;
        page = XGraphics.FromPdfPage(sheet);
        (width, bottom, y) = (sheet.Width.Point - 2 * Margin, sheet.Height.Point - Margin, Margin);
    }
}
