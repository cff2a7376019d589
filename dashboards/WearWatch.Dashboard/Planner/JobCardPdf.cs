
using WearWatch.Dashboard.Kit.Paper;

namespace WearWatch.Dashboard.Planner;

/// <summary>A job card as PDF.</summary>
public static class JobCardPdf
{
    private const double RoomToWrite = 22;

    public static byte[] Write(JobCard card) => PaperSheet.Write($"Job card {card.Chain}", sheet =>
    {
        sheet.Title($"Job card: swap chain {card.Chain}");
        foreach (var caution in card.Cautions) sheet.Strong(caution);
        foreach (var (name, value) in card.Facts) sheet.Row(name, value);
        sheet.Heading("Tools");
        sheet.Paragraph(string.Join("; ", card.Tools) + ".");
        sheet.Heading("Steps");
        for (var i = 0; i < card.Steps.Count; i++) sheet.Paragraph($"{i + 1}.  {card.Steps[i]}");
        sheet.Heading("Write down");
        foreach (var name in card.ToWrite) sheet.Row(name, "", RoomToWrite);
    });
}
