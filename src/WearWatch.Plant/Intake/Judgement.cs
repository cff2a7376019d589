namespace WearWatch.Plant.Intake;

/// <summary>What is to become of a reading that could be read.</summary>
public abstract record Judgement
{
    private Judgement()
    {
    }

    /// <summary>It is used.</summary>
    /// <param name="Column">What the remark is about.</param>
    /// <param name="Remark">What is remarkable about it; null for nothing.</param>
    public sealed record Use(string Column = "", Phrase? Remark = null) : Judgement;

    /// <summary>It is kept and waits for a person.</summary>
    /// <param name="Column">What looks wrong.</param>
    /// <param name="Why">Why it does, and what to look at.</param>
    /// <param name="ForPlanner">Whether no chain can be so: a planner's yes alone counts then.</param>
    public sealed record Wait(string Column, Phrase Why, bool ForPlanner = false) : Judgement;

    /// <summary>It is not taken.</summary>
    /// <param name="Column">What is wrong.</param>
    /// <param name="Why">Why, and what would do.</param>
    public sealed record Refuse(string Column, Phrase Why) : Judgement;
}
