using WearWatch.Phrases;

namespace WearWatch.Wear;

/// <summary>What a notice is about; there is at most one open notice of a kind for a chain.</summary>
public enum NoticeKind
{
    /// <summary>The limit has been passed, or comes near.</summary>
    LimitNear,

    /// <summary>The chain wears faster than it did.</summary>
    RateHasRisen,

    /// <summary>A reading does not fit: measure again.</summary>
    MeasureAgain,

    /// <summary>A reading that cannot be was held back.</summary>
    ReadingHeldBack,

    /// <summary>Oil is due.</summary>
    OilingDue,

    /// <summary>The take-up has little travel left.</summary>
    TakeUpEnds,

    /// <summary>The automatic lubricator gives no oil any more.</summary>
    LubricatorSilent,

    /// <summary>A reading that was believed when it came does not fit those after it.</summary>
    EarlierReadingDoubted,

    /// <summary>The strands of one chain wear unlike: check the alignment.</summary>
    StrandsDiffer,

    /// <summary>A look found something that nobody has put in order yet.</summary>
    FoundByLook,

    /// <summary>A chain that lifts is out of use for another reason than wear.</summary>
    OutOfUse,

    /// <summary>The thorough examination of a chain that lifts is due or overdue, or none is recorded.</summary>
    ExaminationDue,

    /// <summary>Papers of a chain that lifts are missing.</summary>
    PapersMissing,

    /// <summary>The counter that a controller tells jumped or began again, and nobody has said why.</summary>
    CounterJumped,

    /// <summary>Chains that run together have worn unlike.</summary>
    GroupDiffers,

    /// <summary>A part beside the elongation is worn to its limit, or will be soon.</summary>
    PartWorn,
}

/// <summary>Something that asks for a person's attention.</summary>
/// <param name="Kind">What it is about.</param>
/// <param name="Urgent">Whether to act now (red) rather than to attend to it (yellow).</param>
/// <param name="Why">The reason with its numbers, in plain words.</param>
/// <param name="WhatToDo">What to do, in plain words.</param>
public sealed record Notice(NoticeKind Kind, bool Urgent, Phrase Why, Phrase WhatToDo);
