using WearWatch.Plant.Settings;

namespace WearWatch.Plant.Planning;

/// <summary>What became of a plan that a program asked for or told.</summary>
public abstract record PlanAnswer
{
    private PlanAnswer()
    {
    }

    /// <summary>Here it is.</summary>
    /// <param name="Draft">The plan.</param>
    /// <param name="Changed">How many decisions were changed by keeping it; 0 for a proposal, of which nothing is kept.</param>
    public sealed record Planned(PlanDraft Draft, int Changed) : PlanAnswer;

    /// <summary>Nothing was kept: somebody decided otherwise in the meantime, and that would have been lost.</summary>
    /// <param name="Revision">The state of the decisions now.</param>
    public sealed record Overtaken(int Revision) : PlanAnswer;

    /// <summary>Nothing was done.</summary>
    /// <param name="Refusals">What is wrong, field by field.</param>
    public sealed record Refused(IReadOnlyList<Refusal> Refusals) : PlanAnswer;
}
