using WearWatch.Lifting.Examinations;

namespace WearWatch.Storage.Rows;

/// <summary>
/// A thorough examination of a lifting chain as its report says. Rows are only ever added. Daily looks and wear measurements are
/// kept as looks and readings; none of the three stands in for another.
/// </summary>
public sealed class ExaminationRow
{
    public long Id { get; init; }

    public int ChainId { get; init; }

    /// <summary>Given by whoever sends it: sent twice, it is stored once.</summary>
    public required string Key { get; init; }

    /// <summary>Who made the key.</summary>
    public KeyOwner KeyOwner { get; init; }

    public DateOnly On { get; init; }

    public required string Examiner { get; init; }

    /// <summary>The examiner's firm and address, where it is nobody of the plant.</summary>
    public string ExaminerAddress { get; init; } = "";

    /// <summary>The appointment by which the examiner examined.</summary>
    public int? AppointmentId { get; init; }

    public ExaminationOccasion Occasion { get; init; }

    public ExaminationResult Result { get; init; }

    /// <summary>Each point of the sheet with what was found.</summary>
    public required IReadOnlyList<PointResult> Points { get; init; }

    public string Remarks { get; init; } = "";

    /// <summary>By when a defect is to be put right.</summary>
    public DateOnly? RemedyBy { get; init; }

    /// <summary>The next one as the report says; null where the register's interval counts.</summary>
    public DateOnly? NextOn { get; init; }

    public string ReportNumber { get; init; } = "";

    /// <summary>The scanned report.</summary>
    public long? FileId { get; init; }

    public double? CounterH { get; init; }

    /// <summary>The examination that this one replaces, or null.</summary>
    public long? CorrectsId { get; init; }

    /// <summary>Set on a correction that withdraws an examination.</summary>
    public bool Withdraws { get; init; }

    public required string ToldBy { get; init; }

    public DateTimeOffset ReceivedAt { get; init; }

    /// <summary>The examination as the domain knows it.</summary>
    public Examination ToExamination() => new(On, ReceivedAt, Result, Points, RemedyBy, NextOn);
}
