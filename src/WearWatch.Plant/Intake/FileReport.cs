using WearWatch.Plant.Files;

namespace WearWatch.Plant.Intake;

/// <summary>What an import made of one file.</summary>
/// <param name="Name">The file's name.</param>
/// <param name="Kind">What is in it.</param>
/// <param name="Taken">Rows that are new, or chains that are new or changed.</param>
/// <param name="AlreadyKnown">Rows that had been told before.</param>
/// <param name="Waiting">Rows that are kept and wait for a person.</param>
/// <param name="Refused">Rows that were not taken; a file that cannot be read at all counts one.</param>
/// <param name="Remarks">The first remarks, at most <see cref="MostRemarks"/>.</param>
/// <param name="RemarkCount">How many there were.</param>
public sealed record FileReport(
    string Name, FileKind Kind, int Taken, int AlreadyKnown, int Waiting, int Refused, IReadOnlyList<RowRemark> Remarks,
    int RemarkCount)
{
    /// <summary>More remarks than this are counted but not kept.</summary>
    public const int MostRemarks = 1_000;
}
