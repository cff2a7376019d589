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

    /// <summary>The user may not read, write or listen where it is needed.</summary>
    public const int NoRights = 3;

    /// <summary>The plant's memory is damaged, or is no database.</summary>
    public const int DatabaseDamaged = 4;

    /// <summary>A newer program wrote the plant's memory.</summary>
    public const int DatabaseNewer = 5;

    /// <summary>Another program listens on the address.</summary>
    public const int AddressTaken = 6;

    /// <summary>The disk is full.</summary>
    public const int DiskFull = 7;

    /// <summary>Another worker has the data folder.</summary>
    public const int FolderTaken = 8;

    /// <summary>The database cannot be reached.</summary>
    public const int DatabaseAway = 9;

    /// <summary>A setting cannot be used.</summary>
    public const int SettingsWrong = 10;
}
