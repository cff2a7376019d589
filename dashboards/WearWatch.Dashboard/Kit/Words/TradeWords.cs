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
        LimitReason.General => T["general limit"],
        LimitReason.SprocketTeeth => T["sprocket teeth"],
        LimitReason.FixedCentres => T["fixed centres"],
        LimitReason.ParallelStrands => T["parallel strands"],
        LimitReason.TakeUpTravel => T["take-up travel left"],
        LimitReason.Timing => T["timing"],
        LimitReason.Lifting => T["lifting chain"],
        LimitReason.HighPerformance => T["high-performance drive"],
        LimitReason.SetByPlant => T["set by the plant"],
        _ => throw new UnreachableException($"Limit reason {reason} has no words."),
    };

    /// <summary>A tool.</summary>
    public static string Of(Tool tool) => tool switch
    {
        Tool.Tape => T["tape"],
        Tool.Caliper => T["caliper"],
        Tool.Sensor => T["sensor"],
        _ => throw new UnreachableException($"Tool {tool} has no words."),
    };

    /// <summary>What happened to a chain, strokes of which nothing arrived among it.</summary>
    public static string Of(ChainEvent happened) =>
        happened is { Kind: ChainEventKind.Oiling, BroughtOil: false } ? T["lubricator stroked, no oil came"] : Of(happened.Kind);

    /// <summary>What else was told of it, fact by fact.</summary>
    public static IEnumerable<string> Facts(ChainEvent told, UnitPreference units)
    {
        if (told.PitchesOut is { } pitches)
            yield return T[Phrase.Counted(pitches, $"{pitches:#,0} pitch out", $"{pitches:#,0} pitches out")];
        if (told.NewPitches is { } fitted)
            yield return T[Phrase.Counted(fitted, $"{fitted:#,0} pitch when new", $"{fitted:#,0} pitches when new")];
        if (told.NewTeeth is { } teeth) yield return T[$"{teeth:#,0} teeth"];
        if (told.Broke) yield return T["the old chain broke"];
        if (told.Lot.Length > 0) yield return T[$"lot {told.Lot}"];
        if (told.TakeUpMm is { } takeUp) yield return T[$"take-up at {units.OfLength(takeUp)}"];
    }

    /// <summary>What happened to a chain.</summary>
    public static string Of(ChainEventKind kind) => kind switch
    {
        ChainEventKind.Replacement => T["new chain fitted"],
        ChainEventKind.MeterReset => T["hour counter changed"],
        ChainEventKind.Oiling => T["lubricated"],
        ChainEventKind.Shortened => T["shortened"],
        ChainEventKind.Tensioned => T["tensioned"],
        ChainEventKind.Inspection => T["inspected"],
        ChainEventKind.SprocketReplaced => T["sprocket replaced"],
        _ => throw new UnreachableException($"Event {kind} has no words."),
    };

    /// <summary>What a notice is about.</summary>
    public static string Of(NoticeKind kind) => kind switch
    {
        NoticeKind.LimitNear => T["Limit near"],
        NoticeKind.RateHasRisen => T["Wears faster"],
        NoticeKind.MeasureAgain => T["Measure again"],
        NoticeKind.ReadingHeldBack => T["Reading held back"],
        NoticeKind.OilingDue => T["Lubrication due"],
        NoticeKind.TakeUpEnds => T["Take-up at its end"],
        NoticeKind.LubricatorSilent => T["Lubricator silent"],
        NoticeKind.EarlierReadingDoubted => T["Earlier reading in doubt"],
        NoticeKind.StrandsDiffer => T["Strands differ"],
        NoticeKind.FoundByLook => T["Found by inspection"],
        NoticeKind.OutOfUse => T["Out of use"],
        NoticeKind.ExaminationDue => T["Thorough examination"],
        NoticeKind.PapersMissing => T["Papers missing"],
        NoticeKind.CounterJumped => T["Counter jumped"],
        NoticeKind.GroupDiffers => T["Group wears unlike"],
        NoticeKind.PartWorn => T["Part worn"],
        _ => throw new UnreachableException($"Notice {kind} has no words."),
    };

    /// <summary>What is done at a stop of a round.</summary>
    public static string Of(RoundTaskKind task) => task switch
    {
        RoundTaskKind.Measure => T["measure"],
        RoundTaskKind.Lubricate => T["lubricate"],
        RoundTaskKind.Inspect => T["inspect"],
        _ => throw new UnreachableException($"Task {task} has no words."),
    };
}
