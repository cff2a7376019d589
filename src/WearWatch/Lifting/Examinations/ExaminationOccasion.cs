namespace WearWatch.Lifting.Examinations;

/// <summary>Why a thorough examination was made.</summary>
public enum ExaminationOccasion
{
    /// <summary>Its date had come.</summary>
    Periodic,

    /// <summary>Before the first use.</summary>
    Initial,

    /// <summary>After an overload, an accident, heat, or another exceptional event.</summary>
    Exceptional,

    /// <summary>After a repair or an alteration of the machine.</summary>
    AfterRepair,

    /// <summary>After it had not been used for long.</summary>
    AfterIdleness,
}
