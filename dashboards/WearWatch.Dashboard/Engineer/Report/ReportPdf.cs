using WearWatch.Dashboard.Kit.Lifting;
using WearWatch.Dashboard.Kit.Paper;

namespace WearWatch.Dashboard.Engineer.Report;

/// <summary>The monthly report as PDF: one or two sheets.</summary>
public static class ReportPdf
{
    public static byte[] Write(MonthReport report) => PaperSheet.Write(report.Title, sheet =>
    {
        sheet.Title(report.Title);
        sheet.Paragraph(report.Under, 4);
        foreach (var part in report.Parts)
        {
            sheet.Heading(part.Heading);
            foreach (var sentence in part.Sentences) sheet.Paragraph(sentence);
            if (part.Picture is { } picture) sheet.Picture(picture);
            if (part.Table is { } table)
                sheet.Table(table.Head, [.. table.Rows.Select(row => Marked(row, report.Lifting))], figures: !table.Words);
        }
    });

    /// <summary>A row in which each chain that lifts bears what stands against its use.</summary>
    private static IReadOnlyList<string> Marked(IReadOnlyList<string> row, LiftingStatesView lifting) =>
        [.. row.Select(cell => lifting[cell] is { } now ? $"{cell} ({T[now.Brief]})" : cell)];
}
