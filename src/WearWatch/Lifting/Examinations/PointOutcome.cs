namespace WearWatch.Lifting.Examinations;

/// <summary>What an examiner says of one point. Not examined is not the same as nothing found.</summary>
public enum PointOutcome
{
    /// <summary>Nobody examined it.</summary>
    NotExamined,

    /// <summary>It was examined and nothing was found.</summary>
    NothingFound,

    /// <summary>Something was found.</summary>
    Found,
}
