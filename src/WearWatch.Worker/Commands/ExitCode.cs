namespace WearWatch.Worker.Commands;

/// <summary>What the command line gives back to its caller.</summary>
public static class ExitCode
{
    /// <summary>Everything was done.</summary>
    public const int Done = 0;

    /// <summary>Input was refused; what could be done was done.</summary>
    public const int Refused = 1;

    /// <summary>The command was not understood.</summary>
    public const int WrongUsage = 2;
}
