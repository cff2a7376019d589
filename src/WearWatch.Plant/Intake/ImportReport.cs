namespace WearWatch.Plant.Intake;

/// <summary>What an import made of its files.</summary>
/// <param name="Files">The files, in the order in which they were taken in.</param>
public sealed record ImportReport(IReadOnlyList<FileReport> Files)
{
    /// <summary>Rows that are new, over all files.</summary>
    public int Taken => Files.Sum(f => f.Taken);

    /// <summary>Rows that had been told before, over all files.</summary>
    public int AlreadyKnown => Files.Sum(f => f.AlreadyKnown);

    /// <summary>Rows that wait for a person, over all files.</summary>
    public int Waiting => Files.Sum(f => f.Waiting);

    /// <summary>Rows that were not taken, over all files; a file that cannot be read at all counts one.</summary>
    public int Refused => Files.Sum(f => f.Refused);
}
