using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Plant.Intake;

namespace WearWatch.Plant.Folders;

/// <summary>A chain of a folder of files, with all that the files tell of it.</summary>
/// <param name="card">Its entry in the register.</param>
public sealed class FolderChain(ChainCard card)
{
    private readonly List<Reading?> rows = [];

    /// <summary>Its entry in the register.</summary>
    public ChainCard Card => card;

    /// <summary>Its events in the order of the file.</summary>
    public List<ChainEvent> Events { get; } = [];

    /// <summary>Its readings in the order of the file. Those that were refused are left out.</summary>
    public IReadOnlyList<Reading> Readings => [.. rows.OfType<Reading>()];

    /// <summary>The readings among its first rows of the file, refused rows counted.</summary>
    public IReadOnlyList<Reading> FirstReadings(int rowCount) => [.. rows.Take(rowCount).OfType<Reading>()];

    /// <summary>Its rows in the readings file, refused ones counted.</summary>
    public int RowCount => rows.Count;

    /// <summary>Adds a row of the readings file; null for one that was refused.</summary>
    public void Add(Reading? reading) => rows.Add(reading);

    /// <summary>What is known of the chain before its first reading.</summary>
    internal ChainSoFar SoFar() => new(card, Events);
}
