using WearWatch.Dashboard.Kit.Lifting;
using WearWatch.Dashboard.Kit.Paper;

namespace WearWatch.Dashboard.Planner;

/// <summary>A job card as PDF.</summary>
public static class JobCardPdf
{
    private const double RoomToWrite = 22;

    /// <param name="card">The card.</param>
    /// <param name="lifting">What stands against the chain's use; null for one that does not lift.</param>
    public static byte[] Write(JobCard card, LiftingNow? lifting) =>
        PaperSheet.Write(T[$"Job card {card.Chain}"], sheet => Draw(sheet, card, lifting));

    /// <summary>Draws a card on a sheet, from where that stands.</summary>
    internal static void Draw(PaperSheet sheet, JobCard card, LiftingNow? lifting)
    {
        sheet.Title(T[$"Job card: swap chain {card.Chain}"]);
        foreach (var words in lifting is null ? [] : LiftingWords.Lines(lifting)) sheet.Strong(words);
        foreach (var caution in card.Cautions) sheet.Strong(caution);
        foreach (var (name, value) in card.Facts) sheet.Row(name, value);
        sheet.Heading(T["Tools"]);
        sheet.Paragraph(string.Join("; ", card.Tools) + ".");
        sheet.Heading(T["Steps"]);
        for (var i = 0; i < card.Steps.Count; i++) sheet.Paragraph($"{i + 1}.  {card.Steps[i]}");
        sheet.Heading(T["Write down"]);
        foreach (var name in card.ToWrite) sheet.Row(name, "", RoomToWrite);
    }
}
