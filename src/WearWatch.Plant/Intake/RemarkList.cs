using System.Globalization;
using WearWatch.Plant.Files;

namespace WearWatch.Plant.Intake;

/// <summary>Counts what becomes of a file's rows and keeps the first remarks.</summary>
public sealed class RemarkList(string file, int most = FileReport.MostRemarks)
{
    private readonly List<RowRemark> kept = [];
    private readonly Dictionary<UInt128, int> lines = [];
    private int remarks;
    private readonly HashSet<int> refused = [];

    /// <summary>Rows that are new.</summary>
    public int Taken { get; set; }

    /// <summary>Rows that had been entered before.</summary>
    public int AlreadyKnown { get; set; }

    /// <summary>Rows that are kept and wait for a person.</summary>
    public int Waiting { get; set; }

    /// <summary>Rows that were not taken.</summary>
    public int Refused => refused.Count;

    /// <summary>Notes something about a row. A row that is refused for two reasons is one refused row with two remarks.</summary>
    public void Add(int line, string column, Phrase reason, RemarkKind kind)
    {
        if (kind == RemarkKind.Refused) refused.Add(line);
        if (++remarks <= most) kept.Add(new RowRemark(file, line, column, reason, kind));
    }

    /// <summary>Notes what a judgement has to say about a row.</summary>
    public void Add(int line, Judgement judgement)
    {
        if (judgement is Judgement.Refuse refuse) Add(line, refuse.Column, refuse.Why, RemarkKind.Refused);
        if (judgement is Judgement.Wait wait) Add(line, wait.Column, wait.Why, RemarkKind.Waiting);
        if (judgement is Judgement.Use { Remark: { } remark } use) Add(line, use.Column, remark, RemarkKind.Warning);
    }

    /// <summary>Notes what the file itself has to say about a row.</summary>
    public void Add(FileItem item)
    {
        if (item is FileItem.Unreadable lost) Add(lost.Line, lost.Column, lost.Reason, RemarkKind.Refused);
        if (item is FileItem.Noted noted) Add(noted.Line, noted.Column, noted.Reason, RemarkKind.Warning);
    }

    /// <summary>
    /// Whether a row tells nothing new, because it is stored or because an equal one stands before it in the file.
    /// </summary>
    /// <remarks>A row equal to another in every column is one copied by mistake: counted twice it would weigh twice.</remarks>
    public bool IsRepeated(string fingerprint, int line, bool isStored)
    {
        // a million of them fit better as numbers
        var name = UInt128.Parse(fingerprint, NumberStyles.HexNumber, CultureInfo.InvariantCulture);
        var isFirst = lines.TryAdd(name, line);
        if (isFirst && !isStored) return false;
        AlreadyKnown++;
        if (!isFirst && lines[name] is var first)
            Add(line, "", $"Equal to line {first} in every column: it was taken once.",
                RemarkKind.Warning);
        return true;
    }

    /// <summary>The report.</summary>
    public FileReport Report(FileKind kind) => new()
    {
        Name = file,
        Kind = kind,
        Taken = Taken,
        AlreadyKnown = AlreadyKnown,
        Waiting = Waiting,
        Refused = Refused,
        RefusedLines = refused,
        Remarks = [.. kept.OrderBy(r => r.Line)],
        RemarkCount = remarks,
    };
}
