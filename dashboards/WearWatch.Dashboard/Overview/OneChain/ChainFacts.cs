using WearWatch.Dashboard.Overview.Notices;
using WearWatch.Links;
using WearWatch.Lubrication;
using WearWatch.Parts;
using WearWatch.Plant.WorkOrders;
using WearWatch.Running;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Overview.OneChain;

/// <summary>All that the plant's memory holds of one chain, and what follows from it.</summary>
public sealed record ChainFacts
{
    public required ChainRow Row { get; init; }

    /// <summary>The live assessment.</summary>
    public required Assessment Assessment { get; init; }

    /// <summary>What the measures of its links say; null for a chain without a table of them.</summary>
    public LinksState? Links { get; init; }

    /// <summary>The measures of its links that stand, in the order taken.</summary>
    public IReadOnlyList<LinkMeasureRow> LinkMeasures { get; init; } = [];

    /// <summary>What the readings of its parts and its wheels say.</summary>
    public required PartsState Parts { get; init; }

    /// <summary>The limit that ends the chain, as its review concludes; null where no date of any is known.</summary>
    public LimitAhead? First { get; init; }

    /// <summary>The limit that its dates go by.</summary>
    public LimitAhead Ahead => First ?? LimitAhead.ByLength(Assessment);

    /// <summary>The readings of its parts that stand, in the order taken.</summary>
    public IReadOnlyList<PartReadingRow> PartReadings { get; init; } = [];

    /// <summary>The readings that count, in the order to which the assessment's indices refer.</summary>
    public required IReadOnlyList<ReadingRow> Standing { get; init; }

    /// <summary>The reading whose counter leaves nothing known of the chain; null where none does.</summary>
    public ReadingRow? NotKnownBy => Assessment.NotKnownByReading is { } index ? Standing[index] : null;

    /// <summary>The readings that wait for a person's word.</summary>
    public required IReadOnlyList<ReadingRow> Waiting { get; init; }

    public required IReadOnlyList<EventRow> Events { get; init; }

    /// <summary>The forecasts so far, oldest first.</summary>
    public required IReadOnlyList<ForecastRow> Forecasts { get; init; }

    /// <summary>Open notices first, then the ended ones, newest first.</summary>
    public required IReadOnlyList<NoticeLine> Notices { get; init; }

    /// <summary>The swap that is planned and not done yet; null for none.</summary>
    public SwapRow? Swap { get; init; }

    /// <summary>The work order of that swap in another system; null while none was reported.</summary>
    public WorkOrder? Order { get; init; }

    public required ProductionCalendar Calendar { get; init; }

    /// <summary>What the plant says of its oiling.</summary>
    public OilTerms OilTerms { get; init; } = OilTerms.Default;
}
