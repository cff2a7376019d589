namespace WearWatch.Lifting.Examinations;

/// <summary>A thorough examination as its report says.</summary>
/// <param name="On">The day on which it was made.</param>
/// <param name="ToldAt">When it was told.</param>
/// <param name="Result">What the report says.</param>
/// <param name="Points">Each point of the sheet.</param>
/// <param name="RemedyBy">By when a defect is to be put right.</param>
/// <param name="NextOn">The next one as the report says.</param>
public sealed record Examination(
    DateOnly On, DateTimeOffset ToldAt, ExaminationResult Result, IReadOnlyList<PointResult> Points, DateOnly? RemedyBy = null,
    DateOnly? NextOn = null)
{
    /// <summary>Whether it says something of the whole chain, so that the next one counts from it.</summary>
    public bool IsWhole => Result != ExaminationResult.Incomplete;
}
