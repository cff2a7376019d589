using Microsoft.EntityFrameworkCore;
using WearWatch.Lifting.Examinations;
using WearWatch.Plant.Files;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Engineer.History.Tables;

/// <summary>All reports of thorough examinations, as they were told.</summary>
internal static class ExaminationTable
{
    public static HistoryTable Of(IDbContextFactory<WearDb> databases) => OfChain.Shape<ExaminationRow>(e => e.Id)
        .Text("examined_on", $"the day", x => Day(x.Row.On))
        .Text("examiner", $"who examined it", x => x.Row.Examiner)
        .Whole("appointment", $"by which appointment", x => x.Row.AppointmentId)
        .Text("occasion", $"why it was examined", x => FileWords.Of(x.Row.Occasion))
        .Text("result", $"what the report says; none of it releases a chain", x => FileWords.Of(x.Row.Result))
        .Whole("points_examined", $"how many points were examined; the others were not", x => x.Row.Points.Count)
        .Text("found", $"at which of them something was found, with semicolons between", x => Found(x.Row))
        .Text("remedy_by", $"by when it is to be put right", x => Day(x.Row.RemedyBy))
        .Text("next_on", $"the next one by the report", x => Day(x.Row.NextOn))
        .Text("report_number", $"its number", x => x.Row.ReportNumber)
        .Text("remarks", $"what else it says, or why it was withdrawn", x => x.Row.Remarks)
        .Whole("corrects_id", $"the row that it takes the place of", x => x.Row.CorrectsId)
        .YesNo("withdraws", $"whether it withdraws that one", x => x.Row.Withdraws)
        .Text("told_by", $"person or program", x => x.Row.ToldBy)
        .Moment("received_at", $"when it arrived", x => x.Row.ReceivedAt)
        .Table("examinations", $"A report of a thorough examination of a chain that lifts.", databases,
            (db, after) => from report in db.Examinations.AsNoTracking()
                           where report.Id > after
                           join chain in db.Chains on report.ChainId equals chain.Id
                           orderby report.Id
                           select new OfChain<ExaminationRow>(report, chain.Name));

    private static string Found(ExaminationRow report) => string.Join(
        "; ", report.Points.Where(p => p.Outcome == PointOutcome.Found).Select(p => FileWords.Of(p.Point)));

    private static string? Day(DateOnly? day) =>
        day?.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}
