using WearWatch.Chains.Families;
using WearWatch.Lifting.Examinations;
using WearWatch.Plant.Lifting;

namespace WearWatch.Dashboard.Lifting;

/// <summary>A point of the sheet while it is filled in.</summary>
public sealed class PointEntry(CheckPoint point)
{
    public CheckPoint Point { get; } = point;

    public PointOutcome Outcome { get; set; }

    public string Measured { get; set; } = "";

    public string Note { get; set; } = "";
}

/// <summary>What a person fills in of a report.</summary>
public sealed class ExaminationForm(IReadOnlyList<CheckPoint> points, DateOnly today)
{
    public FormValues Faults { get; } = new();

    public IReadOnlyList<PointEntry> Points { get; } = [.. points.Select(p => new PointEntry(p))];

    public DateOnly? On { get; set; } = today;

    public string Examiner { get; set; } = "";

    public string ExaminerAddress { get; set; } = "";

    public ExaminationOccasion Occasion { get; set; }

    public ExaminationResult Result { get; set; } = ExaminationResult.Incomplete;

    public string Remarks { get; set; } = "";

    public DateOnly? RemedyBy { get; set; }

    public DateOnly? NextOn { get; set; }

    public string ReportNumber { get; set; } = "";

    public string File { get; set; } = "";

    public string CounterH { get; set; } = "";

    public string By { get; set; } = "";

    /// <summary>The report; null with what is wrong in <see cref="Faults"/>.</summary>
    public NewExamination? Read(string key, string chain, string toldBy)
    {
        Faults.Clear();
        if (On is null) Faults.Add("on", T["Say on which day."]);
        var report = new NewExamination
        {
            Key = key,
            Chain = chain,
            On = On ?? default,
            Examiner = Examiner,
            ExaminerAddress = ExaminerAddress,
            Occasion = Occasion,
            Result = Result,
            Points = [.. Points.Select(p => new PointResult(p.Point.Point, p.Outcome, p.Measured.Trim(), p.Note.Trim()))],
            Remarks = Remarks,
            RemedyBy = RemedyBy,
            NextOn = NextOn,
            ReportNumber = ReportNumber,
            FileId = Faults.Whole("file", File),
            CounterH = Faults.Number("counter_h", CounterH),
            ToldBy = toldBy,
        };
        return Faults.IsFine ? report : null;
    }
}
