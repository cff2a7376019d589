using System.Diagnostics;
using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Rounds;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Kit.Words;

/// <summary>The domain's enumerations in the words of the trade.</summary>
public static class TradeWords
{
    /// <summary>Why a limit is what it is, to follow "because of" or to stand in a column.</summary>
    public static string Of(LimitReason reason) => reason switch
    {
        LimitReason.General => "general limit",
        LimitReason.SprocketTeeth => "sprocket teeth",
        LimitReason.FixedCentres => "fixed centres",
        LimitReason.ParallelStrands => "parallel strands",
        LimitReason.TakeUpTravel => "take-up travel left",
        LimitReason.Timing => "timing",
        LimitReason.Lifting => "lifting chain",
        LimitReason.HighPerformance => "high-performance drive",
        LimitReason.SetByPlant => "set by the plant",
        _ => throw new UnreachableException($"Limit reason {reason} has no words."),
    };

    /// <summary>A tool.</summary>
    public static string Of(Tool tool) => tool switch
    {
        Tool.Tape => "tape",
        Tool.Caliper => "caliper",
        Tool.Sensor => "sensor",
        _ => throw new UnreachableException($"Tool {tool} has no words."),
    };

    /// <summary>What happened to a chain, strokes of which nothing arrived among it.</summary>
    public static string Of(ChainEvent happened) =>
        happened is { Kind: ChainEventKind.Oiling, BroughtOil: false } ? "lubricator stroked, no oil came" : Of(happened.Kind);

    /// <summary>What else was told of it, fact by fact.</summary>
    public static IEnumerable<string> Facts(ChainEvent told, UnitPreference units)
    {
        if (told.PitchesOut is { } pitches) yield return Show.Count(pitches) + (pitches == 1 ? " pitch out" : " pitches out");
        if (told.NewPitches is { } fitted) yield return Show.Count(fitted) + (fitted == 1 ? " pitch" : " pitches") + " when new";
        if (told.NewTeeth is { } teeth) yield return Show.Count(teeth) + " teeth";
        if (told.Broke) yield return "the old chain broke";
        if (told.Lot.Length > 0) yield return "lot " + told.Lot;
        if (told.TakeUpMm is { } takeUp) yield return "take-up at " + units.OfLength(takeUp);
    }

    /// <summary>What happened to a chain.</summary>
    public static string Of(ChainEventKind kind) => kind switch
    {
        ChainEventKind.Replacement => "new chain fitted",
        ChainEventKind.MeterReset => "hour counter changed",
        ChainEventKind.Oiling => "lubricated",
        ChainEventKind.Shortened => "shortened",
        ChainEventKind.Tensioned => "tensioned",
        ChainEventKind.Inspection => "inspected",
        ChainEventKind.SprocketReplaced => "sprocket replaced",
        _ => throw new UnreachableException($"Event {kind} has no words."),
    };

    /// <summary>What a notice is about.</summary>
    public static string Of(NoticeKind kind) => kind switch
    {
        NoticeKind.LimitNear => "Limit near",
        NoticeKind.RateHasRisen => "Wears faster",
        NoticeKind.MeasureAgain => "Measure again",
        NoticeKind.ReadingHeldBack => "Reading held back",
        NoticeKind.OilingDue => "Lubrication due",
        NoticeKind.TakeUpEnds => "Take-up at its end",
        NoticeKind.LubricatorSilent => "Lubricator silent",
        NoticeKind.EarlierReadingDoubted => "Earlier reading in doubt",
        NoticeKind.StrandsDiffer => "Strands differ",
        NoticeKind.FoundByLook => "Found by inspection",
        NoticeKind.OutOfUse => "Out of use",
        NoticeKind.ExaminationDue => "Thorough examination",
        NoticeKind.PapersMissing => "Papers missing",
        _ => throw new UnreachableException($"Notice {kind} has no words."),
    };

    /// <summary>What is done at a stop of a round.</summary>
    public static string Of(RoundTaskKind task) => task switch
    {
        RoundTaskKind.Measure => "measure",
        RoundTaskKind.Lubricate => "lubricate",
        RoundTaskKind.Inspect => "inspect",
        _ => throw new UnreachableException($"Task {task} has no words."),
    };
}
