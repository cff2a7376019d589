using WearWatch.Lifting.Examinations;

namespace WearWatch.Plant.Lifting;

/// <summary>The report of a thorough examination on its way in.</summary>
public sealed record NewExamination
{
    /// <summary>Given by whoever sends it: the same key sent twice is stored once.</summary>
    public required string Key { get; init; }

    /// <summary>The chain's name.</summary>
    public required string Chain { get; init; }

    /// <summary>The day on which it was made.</summary>
    public required DateOnly On { get; init; }

    /// <summary>Who examined: a person with an appointment.</summary>
    public required string Examiner { get; init; }

    /// <summary>Firm and address, where the examiner is nobody of the plant.</summary>
    public string ExaminerAddress { get; init; } = "";

    /// <summary>Why it was made.</summary>
    public ExaminationOccasion Occasion { get; init; }

    /// <summary>What the report says.</summary>
    public required ExaminationResult Result { get; init; }

    /// <summary>Each point of the sheet; what is left out was not examined.</summary>
    public IReadOnlyList<PointResult> Points { get; init; } = [];

    /// <summary>What else the report says.</summary>
    public string Remarks { get; init; } = "";

    /// <summary>By when a defect is to be put right.</summary>
    public DateOnly? RemedyBy { get; init; }

    /// <summary>The next one as the report says.</summary>
    public DateOnly? NextOn { get; init; }

    /// <summary>The report's number.</summary>
    public string ReportNumber { get; init; } = "";

    /// <summary>The scanned report.</summary>
    public long? FileId { get; init; }

    /// <summary>The hour counter.</summary>
    public double? CounterH { get; init; }

    /// <summary>Who entered it.</summary>
    public required string ToldBy { get; init; }
}
