using Microsoft.AspNetCore.Components.Forms;
using WearWatch.Plant.Files;

namespace WearWatch.Dashboard.Administration.Importing;

/// <summary>
/// The files that a person chose, kept in a folder of their own until they are taken in: a browser's stream can be read once
/// only.
/// </summary>
/// <param name="by">Who chose them.</param>
public sealed class ChosenFiles(string by) : IDisposable
{
    /// <summary>The largest file that is taken from a browser: a million readings have about 60 MB.</summary>
    public const long MostBytes = 512L * 1024 * 1024;

    /// <summary>More files at once are a mistake.</summary>
    public const int MostFiles = 20;

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("wearwatch-import-");
    private readonly List<ImportFile> files = [];

    /// <summary>The files, ready to be read as often as need be.</summary>
    public IReadOnlyList<ImportFile> Files => files;

    /// <summary>Brings a file over from the browser.</summary>
    public async Task TakeAsync(IBrowserFile file, IProgress<double> share, CancellationToken ct)
    {
        var path = Path.Combine(folder.FullName, $"{files.Count}.csv");
        await using (var from = file.OpenReadStream(MostBytes, ct))
        await using (var to = File.Create(path))
        {
            var buffer = new byte[81920];
            long done = 0;
            for (int read; (read = await from.ReadAsync(buffer, ct)) > 0; done += read)
            {
                await to.WriteAsync(buffer.AsMemory(0, read), ct);
                share.Report((double)(done + read) / Math.Max(1, file.Size));
            }
        }

        files.Add(new ImportFile(Path.GetFileName(file.Name), () => File.OpenRead(path)) { By = by });
    }

    /// <summary>Puts a file with what a person says of it in the place of the same one without.</summary>
    public void Change(int at, ImportFile file) => files[at] = file;

    public void Dispose()
    {
        try
        {
            folder.Delete(recursive: true);
        }
        catch (IOException)
        {
            // A file is still being read; the system's own cleaning of temporary folders takes it.
        }
    }
}
