using WearWatch.Wear;

namespace WearWatch.Dashboard.Kit.Words;

/// <summary>What a chain just fitted still has before it. Without these words the track seems to contradict the tape.</summary>
public static class RunInWords
{
    /// <summary>Less is within what a tape tells.</summary>
    private const double LeastToldPercent = 0.02;

    /// <summary>To stand behind the elongation by the track; empty where the run-in is over.</summary>
    public static string Of(Assessment assessment) => assessment.RunInLeftPercent < LeastToldPercent
        ? ""
        : T[$" (with {Show.Percent(assessment.RunInLeftPercent)} of run-in that is still to come)"];
}
