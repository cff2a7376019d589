using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Units;

namespace WearWatch.Plant.Files;

/// <summary>What was found in a row of a file.</summary>
/// <param name="Line">The line in which the row begins, from 1.</param>
public abstract record FileItem(int Line)
{
    /// <summary>A chain of the register.</summary>
    /// <param name="Line">The line in which the row begins, from 1.</param>
    /// <param name="Card">Its card.</param>
    public sealed record Chain(int Line, ChainCard Card) : FileItem(Line);

    /// <summary>A reading.</summary>
    /// <param name="Line">The line in which the row begins, from 1.</param>
    /// <param name="Reading">The reading.</param>
    public sealed record Measured(int Line, Reading Reading) : FileItem(Line);

    /// <summary>An event.</summary>
    /// <param name="Line">The line in which the row begins, from 1.</param>
    /// <param name="Event">The event.</param>
    public sealed record Happened(int Line, ChainEvent Event) : FileItem(Line);

    /// <summary>Measures of the links of a round-link chain, as they were written.</summary>
    /// <param name="Line">The line in which the row begins, from 1.</param>
    public sealed record Linked(int Line) : FileItem(Line)
    {
        /// <summary>The chain's name.</summary>
        public required string OfChain { get; init; }

        /// <summary>When they were taken; this or the counter is needed.</summary>
        public required DateTimeOffset? TakenAt { get; init; }

        /// <summary>The hour counter then.</summary>
        public required double? CounterH { get; init; }

        /// <summary>Which link, where.</summary>
        public required string Place { get; init; }

        /// <summary>With what the length over several links was measured.</summary>
        public required Tool Tool { get; init; }

        /// <summary>Inner length of one link, or empty.</summary>
        public required string OneLink { get; init; }

        /// <summary>Length over several links, or empty.</summary>
        public required string SeveralLinks { get; init; }

        /// <summary>Over how many; null for as many as the chain's table says.</summary>
        public required int? Links { get; init; }

        /// <summary>Diameter in the crown in the direction of pull, or empty.</summary>
        public required string D1 { get; init; }

        /// <summary>Diameter in the crown at right angles to it, or empty.</summary>
        public required string D2 { get; init; }

        /// <summary>The unit of plain numbers.</summary>
        public required LengthUnit Unit { get; init; }
    }

    /// <summary>A reading of a part, as it was written.</summary>
    /// <param name="Line">The line in which the row begins, from 1.</param>
    /// <param name="Told">What was written.</param>
    public sealed record PartMeasured(int Line, PartAsWritten Told) : FileItem(Line);

    /// <summary>What another system says of a work order.</summary>
    /// <param name="Line">The line in which the row begins, from 1.</param>
    /// <param name="Told">What was written.</param>
    public sealed record Ordered(int Line, WorkOrderAsWritten Told) : FileItem(Line);

    /// <summary>A row that cannot be read.</summary>
    /// <param name="Line">The line in which the row begins, from 1; 0 stands for the whole file.</param>
    /// <param name="Column">The column that is wrong; empty for the row as a whole.</param>
    /// <param name="Reason">What is wrong with it, for a person.</param>
    /// <param name="OfChain">Its chain, where that can be told.</param>
    public sealed record Unreadable(int Line, string Column, Phrase Reason, string? OfChain = null) : FileItem(Line);

    /// <summary>Something to say that costs no row.</summary>
    /// <param name="Line">The line in which the row begins, from 1.</param>
    /// <param name="Column">The column that it is about; empty for the row as a whole.</param>
    /// <param name="Reason">What there is to say, for a person.</param>
    public sealed record Noted(int Line, string Column, Phrase Reason) : FileItem(Line);
}
