namespace WearWatch.Lifting.Examinations;

/// <summary>How bad the worst is that stands against a lifting chain's use. None of them releases it.</summary>
public enum LiftingVerdict
{
    /// <summary>Nothing that WearWatch knows stands against its use; that is no release.</summary>
    NothingStands,

    /// <summary>Somebody has to attend to it.</summary>
    Attend,

    /// <summary>Its papers or dates are not in order: a competent person examines it before further use.</summary>
    ExamineFirst,

    /// <summary>Out of use.</summary>
    OutOfUse,
}
