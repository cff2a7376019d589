namespace WearWatch.Lifting.Examinations;

/// <summary>What an examiner's report says.</summary>
public enum ExaminationResult
{
    /// <summary>All points of the sheet were examined and nothing was found.</summary>
    NothingFound,

    /// <summary>A defect that is to be put right by a date.</summary>
    RemedyByDate,

    /// <summary>A defect for which it is taken out of use at once.</summary>
    OutOfUse,

    /// <summary>Not all points could be examined: no statement on the rest.</summary>
    Incomplete,
}
