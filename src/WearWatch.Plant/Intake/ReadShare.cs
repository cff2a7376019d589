using WearWatch.Plant.Files;

namespace WearWatch.Plant.Intake;

/// <summary>How much of a file has been read.</summary>
internal sealed class ReadShare
{
    private readonly long length;
    private long position;

    public ReadShare(ImportFile file)
    {
        using var stream = file.Open();
        length = stream.CanSeek ? stream.Length : 0;
    }

    /// <summary>The share of its bytes, 0 to 1; 0 while its length is not known.</summary>
    public double Value => length > 0 ? Math.Min(1, (double)position / length) : 0;

    public void At(long bytes) => position = bytes;
}
