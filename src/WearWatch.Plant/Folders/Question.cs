using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;

namespace WearWatch.Plant.Folders;

/// <summary>A question to the backtest: what would have been forecast when only the first readings were known?</summary>
/// <param name="Id">Its name, given back with the answer.</param>
/// <param name="Chain">The chain.</param>
/// <param name="LimitPercent">The limit asked about.</param>
/// <param name="ReadingsKnown">How many of the chain's rows in the readings file are known.</param>
public sealed record Question(string Id, FolderChain Chain, double LimitPercent, int ReadingsKnown)
{
    private static readonly string[] Columns = ["id", "chain", "limit_pct", "readings_known"];

    /// <summary>Reads a file of questions.</summary>
    /// <param name="path">The file.</param>
    /// <param name="folder">The chains that may be asked about.</param>
    /// <param name="remarks">What is refused.</param>
    public static List<Question> Read(string path, FleetFolder folder, out IReadOnlyList<RowRemark> remarks)
    {
        var list = new RemarkList(Path.GetFileName(path), most: int.MaxValue);
        var questions = new List<Question>();
        using (var stream = File.OpenRead(path))
        {
            if (FileText.WhyNotText(stream) is { } reason) list.Add(0, "", reason, RemarkKind.Refused);
        }

        if (list.Refused == 0)
        {
            using var rows = new CsvRowReader(File.OpenRead(path));
            if (Header(rows, list) is { } fields)
            {
                while (rows.Next())
                    if (ReadRow(rows, fields, folder, list) is { } question) questions.Add(question);
            }
        }

        remarks = list.Report(FileKind.Unknown).Remarks;
        return questions;
    }

    private static RowFields? Header(CsvRowReader rows, RemarkList list)
    {
        string[] header = rows.Next() ? [.. rows.Fields.Select(f => f.Trim())] : [];
        foreach (var missing in Columns.Except(header)) list.Add(1, missing, $"The column is missing.", RemarkKind.Refused);
        return list.Refused > 0
            ? null
            : new RowFields(Columns.ToDictionary(c => c, c => Array.IndexOf(header, c)), TimeZoneInfo.Utc);
    }

    private static Question? ReadRow(CsvRowReader rows, RowFields fields, FleetFolder folder, RemarkList list)
    {
        fields.Take(rows.Fields);
        if (rows.WhyBroken is { } reason) fields.Fault("", reason);
        var name = fields.Needed("chain", $"write the chain's name.");
        var chain = folder.Find(name);
        if (chain is null && name.Length > 0) fields.Fault("chain", $"The chain '{name}' is not in the folder's register.");
        fields.Needed("limit_pct", $"write the limit in percent.");
        var limit = fields.Number("limit_pct", 0.01, 9.99);
        fields.Needed("readings_known", $"write how many readings are known.");
        var known = fields.Whole("readings_known", 0, chain?.RowCount ?? int.MaxValue);
        foreach (var (column, fault) in fields.Faults) list.Add(rows.Line, column, fault, RemarkKind.Refused);
        return fields.Faults.Count > 0 ? null : new Question(fields.Text("id"), chain!, limit!.Value, known!.Value);
    }
}
