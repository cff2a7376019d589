using WearWatch.Chains;
using WearWatch.Gauging;

namespace WearWatch.Plant.Files;

/// <summary>What was found in a row of a file.</summary>
/// <param name="Line">The line in which the row begins, from 1.</param>
public abstract record FileItem(int Line)
{
    /// <summary>A chain of the register.</summary>
    public sealed record Chain(int Line, ChainCard Card) : FileItem(Line);

    /// <summary>A reading.</summary>
    public sealed record Measured(int Line, Reading Reading) : FileItem(Line);

    /// <summary>An event.</summary>
    public sealed record Happened(int Line, ChainEvent Event) : FileItem(Line);

    /// <summary>A row that cannot be read, with its chain where that can be told; line 0 stands for the whole file.</summary>
    public sealed record Unreadable(int Line, string Column, string Reason, string? OfChain = null) : FileItem(Line);

    /// <summary>Something to say that costs no row.</summary>
    public sealed record Noted(int Line, string Column, string Reason) : FileItem(Line);
}
