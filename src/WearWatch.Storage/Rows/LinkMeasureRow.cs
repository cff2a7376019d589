using WearWatch.Gauging;
using WearWatch.Links;
using WearWatch.Phrases;
using WearWatch.Running;

namespace WearWatch.Storage.Rows;

/// <summary>
/// The measures of round links at one place, as they were told. Rows are only ever added: a correction is a new row that names
/// the one it replaces.
/// </summary>
public sealed class LinkMeasureRow
{
    public long Id { get; init; }

    public int ChainId { get; init; }

    /// <summary>Given by whoever sends it, or made from its content: the same measures sent twice are stored once.</summary>
    public required string Key { get; init; }

    /// <summary>Who made the key.</summary>
    public KeyOwner KeyOwner { get; init; }

    public DateTimeOffset? TakenAt { get; init; }

    public double? CounterH { get; init; }

    public string Place { get; init; } = "";

    public Tool Tool { get; init; }

    /// <summary>Inner length of the one link that was measured alone, L1.</summary>
    public double? OneLinkMm { get; init; }

    /// <summary>Length over <see cref="Links"/> links.</summary>
    public double? SeveralLinksMm { get; init; }

    public int? Links { get; init; }

    /// <summary>Whether that length was taken over outer edges.</summary>
    public bool OuterEdges { get; init; }

    /// <summary>Diameter in the crown in the direction of the pull, d1.</summary>
    public double? D1Mm { get; init; }

    /// <summary>Diameter in the crown at right angles to it, d2.</summary>
    public double? D2Mm { get; init; }

    /// <summary>The lengths and diameters as they were written, with their unit, or empty.</summary>
    public string Written { get; init; } = "";

    public ReadingStanding Standing { get; init; }

    /// <summary>Why they wait; empty when they do not.</summary>
    public Phrase WhyWaiting { get; init; } = Phrase.None;

    /// <summary>The measures that these replace, or null.</summary>
    public long? CorrectsId { get; init; }

    /// <summary>Set on a correction that withdraws measures rather than giving others.</summary>
    public bool Withdraws { get; init; }

    /// <summary>Why they were corrected or withdrawn, or empty.</summary>
    public string Note { get; init; } = "";

    public string ToldBy { get; init; } = "";

    public DateTimeOffset ReceivedAt { get; init; }

    /// <summary>The measures as the domain knows them.</summary>
    public MeasuredLinks ToMeasures() => new()
    {
        TakenAt = TakenAt,
        Counter = CounterH is { } h ? new RunningHours(h) : null,
        Place = Place,
        Tool = Tool,
        OneLinkMm = OneLinkMm,
        SeveralLinksMm = SeveralLinksMm,
        Links = Links,
        D1Mm = D1Mm,
        D2Mm = D2Mm,
    };
}
