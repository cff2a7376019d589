using System.Globalization;
using System.Text;
using WearWatch.Plant.Files;

namespace WearWatch.Plant.Intake;

/// <summary>A file's report as text for a person.</summary>
public static class ReportText
{
    /// <summary>The counts, then every remark with its line and column.</summary>
    public static string Of(FileReport report)
    {
        var text = new StringBuilder();
        text.AppendLine(CultureInfo.InvariantCulture, $"{report.Name}: {Name(report.Kind)}");
        text.AppendLine(CultureInfo.InvariantCulture,
            $"{report.Taken} new, {report.AlreadyKnown} already known, {report.Waiting} waiting for a person, {report.Refused} "
            + $"refused");
        if (report.Refused > 0)
            text.AppendLine("The other rows were taken in. Correct the refused ones and drop them in again; rows that are known "
                + "already do no harm.");
        foreach (var remark in report.Remarks) text.AppendLine(CultureInfo.InvariantCulture, $"{Name(remark.Kind)}: {remark}");
        if (report.RemarkCount > report.Remarks.Count)
            text.AppendLine(CultureInfo.InvariantCulture, $"... and {report.RemarkCount - report.Remarks.Count} more remarks");
        return text.ToString();
    }

    private static string Name(FileKind kind) => kind switch
    {
        FileKind.Chains => "register of chains",
        FileKind.Readings => "readings",
        FileKind.Events => "events",
        FileKind.LinkMeasures => "measures of links",
        FileKind.PartReadings => "readings of parts",
        FileKind.WorkOrders => "work orders",
        _ => "not one of our files",
    };

    private static string Name(RemarkKind kind) => kind switch
    {
        RemarkKind.Refused => "refused",
        RemarkKind.Waiting => "waiting",
        _ => "warning",
    };
}
