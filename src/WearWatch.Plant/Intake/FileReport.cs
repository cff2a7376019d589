using WearWatch.Plant.Files;

namespace WearWatch.Plant.Intake;

/// <summary>What an import made of one file.</summary>
public sealed record FileReport
{
    /// <summary>More remarks than this are counted but not kept.</summary>
    public const int MostRemarks = 1_000;

    /// <summary>The file's name.</summary>
    public required string Name { get; init; }

    /// <summary>What is in it.</summary>
    public required FileKind Kind { get; init; }

    /// <summary>Rows that are new, or chains that are new or changed.</summary>
    public int Taken { get; init; }

    /// <summary>Rows that had been entered before.</summary>
    public int AlreadyKnown { get; init; }

    /// <summary>Rows that are kept and wait for a person.</summary>
    public int Waiting { get; init; }

    /// <summary>Rows that were not taken; a file that cannot be read at all counts one.</summary>
    public int Refused { get; init; }

    /// <summary>The lines of the rows that were not taken.</summary>
    public IReadOnlySet<int> RefusedLines { get; init; } = new HashSet<int>();

    /// <summary>The refused rows, to be corrected and imported again; null for none.</summary>
    public RefusedRows? RefusedRows { get; init; }

    /// <summary>The first remarks, at most <see cref="MostRemarks"/>.</summary>
    public required IReadOnlyList<RowRemark> Remarks { get; init; }

    /// <summary>How many there were.</summary>
    public required int RemarkCount { get; init; }
}
