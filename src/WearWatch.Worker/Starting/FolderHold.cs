using WearWatch.Plant.Settings;

namespace WearWatch.Worker.Starting;

/// <summary>Holds a data folder for one worker: two would both watch its inbox.</summary>
public sealed class FolderHold(DataFolder folder) : IDisposable
{
    private const string Name = "worker.lock";
    private FileStream? held;

    /// <summary>Takes hold of the folder until the program ends, however it ends.</summary>
    /// <exception cref="FolderTakenException">Another program has it.</exception>
    public void Take()
    {
        try
        {
            held ??= new FileStream(Path.Combine(folder.Root, Name), FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
        }
        catch (IOException e) when (e is not (DirectoryNotFoundException or PathTooLongException))
        {
            throw new FolderTakenException(folder.Root, e);
        }
    }

    /// <inheritdoc/>
    public void Dispose() => held?.Dispose();
}
