using System.Diagnostics;
using WearWatch.Plant.Settings;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Overview.Notices;

/// <summary>How notices stand and what people did about them, in words.</summary>
public static class NoticeWords
{
    /// <summary>So many ask for a person.</summary>
    public static Phrase Asking(int count) =>
        Phrase.Counted(count, $"{count:#,0} asks for a person", $"{count:#,0} ask for a person");

    /// <summary>So many ask for nobody at the moment.</summary>
    public static Phrase Quiet(int count) => $"{count:#,0} acknowledged, snoozed or planned";

    /// <summary>How a notice stands, for a filter.</summary>
    public static Phrase Of(NoticeStanding standing) => standing switch
    {
        NoticeStanding.Asks => $"asks for a person",
        NoticeStanding.Acknowledged => $"acknowledged",
        NoticeStanding.Snoozed => $"snoozed",
        NoticeStanding.Planned => $"swap planned",
        _ => throw new UnreachableException($"Standing {standing} has no words."),
    };

    /// <summary>
    /// How a notice stands, in short; empty for one that asks for a person. A planned swap has a mark of its own.
    /// </summary>
    public static Phrase Mark(NoticeLine notice, PlantTime time) => notice.Attention.Standing switch
    {
        NoticeStanding.Acknowledged => $"acknowledged",
        NoticeStanding.Snoozed => $"snoozed until {time.DateOf(notice.SnoozedUntil!.Value)}",
        _ => Phrase.None,
    };

    /// <summary>What was done.</summary>
    public static Phrase Of(NoticeStepRow step) => step.Kind switch
    {
        NoticeStepKind.Acknowledged => $"acknowledged",
        NoticeStepKind.Assigned when step.Person.Length == 0 => $"assigned to nobody",
        NoticeStepKind.Assigned => $"assigned to {step.Person}",
        NoticeStepKind.Snoozed => $"snoozed until {step.Until!.Value}",
        NoticeStepKind.Commented => $"commented",
        NoticeStepKind.Woken => $"asks again",
        NoticeStepKind.Worsened => $"became urgent and asks again",
        _ => throw new UnreachableException($"Step {step.Kind} has no words."),
    };
}
