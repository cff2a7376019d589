using WearWatch.Chains;
using WearWatch.Gauging;

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

    /// <summary>A row that cannot be read.</summary>
    /// <param name="Line">The line in which the row begins, from 1; 0 stands for the whole file.</param>
    /// <param name="Column">The column that is wrong; empty for the row as a whole.</param>
    /// <param name="Reason">What is wrong with it, for a person.</param>
    /// <param name="OfChain">Its chain, where that can be told.</param>
    public sealed record Unreadable(int Line, string Column, string Reason, string? OfChain = null) : FileItem(Line);

    /// <summary>Something to say that costs no row.</summary>
    /// <param name="Line">The line in which the row begins, from 1.</param>
    /// <param name="Column">The column that it is about; empty for the row as a whole.</param>
    /// <param name="Reason">What there is to say, for a person.</param>
    public sealed record Noted(int Line, string Column, string Reason) : FileItem(Line);
}
