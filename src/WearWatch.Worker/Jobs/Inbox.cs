using Microsoft.Extensions.Logging;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Settings;

namespace WearWatch.Worker.Jobs;

/// <summary>
/// The folder into which files are dropped. What was taken in goes to <c>done</c>, what has refused rows to <c>refused</c>.
/// </summary>
/// <remarks>
/// A file is taken in before it is moved: a process that is killed in between takes it in again, which changes nothing. Not safe
/// for use by two loops at once.
/// </remarks>
public sealed class Inbox(DataFolder folder, FileImport import, TimeProvider clock, ILogger<Inbox> logger)
{
    /// <summary>A file that does not come to rest holds the others up for so many looks and no longer.</summary>
    private const int MostLooks = 12;

    private Dictionary<string, SeenFile> seen = [];

    /// <summary>Takes in the files that are complete.</summary>
    /// <returns>How many were taken in.</returns>
    public async Task<int> RunOnceAsync(CancellationToken ct = default)
    {
        var now = Directory.EnumerateFiles(folder.Inbox).Where(IsOurs).Select(Look).ToDictionary(f => f.Path);
        seen = now;
        // The register may come last: as long as one file is still being written, those that are complete wait for it.
        if (now.Values.Any(f => !f.IsAtRest && f.Looks < MostLooks)) return 0;
        var complete = now.Values.Where(f => f.IsAtRest && CanBeTaken(f.Path)).ToList();
        if (complete.Count == 0) return 0;
        var report = await import.ImportAsync([.. complete.Select(f => ImportFile.OnDisk(f.Path))], null, ct);
        foreach (var file in report.Files) PutAway(file);
        return report.Files.Count;
    }

    private static bool IsOurs(string path) =>
        path.EndsWith(".csv", StringComparison.OrdinalIgnoreCase) && !Path.GetFileName(path).StartsWith('.');

    private SeenFile Look(string path)
    {
        var info = new FileInfo(path);
        var before = seen.GetValueOrDefault(path);
        var isAtRest = before is not null && before.Length == info.Length && before.WrittenAt == info.LastWriteTimeUtc;
        return new SeenFile(path, info.Length, info.LastWriteTimeUtc, (before?.Looks ?? 0) + 1, isAtRest);
    }

    /// <summary>Whether nobody has the file open for writing, as far as the file system tells.</summary>
    private static bool CanBeTaken(string path)
    {
        try
        {
            using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.None);
            return true;
        }
        catch (IOException)
        {
            return false;
        }
    }

    private void PutAway(FileReport report)
    {
        var to = report.Refused > 0 ? "refused" : "done";
        var target = FreeName(Path.Combine(folder.Inbox, to), report.Name);
        File.WriteAllText(target + ".report.txt", ReportText.Of(report));
        File.Move(Path.Combine(folder.Inbox, report.Name), target);
        if (report.Refused > 0) logger.FileRefused(report.Name, report.Refused, to);
        else logger.FileTaken(report.Name, report.Taken, report.AlreadyKnown, report.Waiting, report.Refused);
    }

    private string FreeName(string directory, string name)
    {
        Directory.CreateDirectory(directory);
        var (stem, extension) = (Path.GetFileNameWithoutExtension(name), Path.GetExtension(name));
        var path = Path.Combine(directory, name);
        for (var i = 0; File.Exists(path); i++)
            path = Path.Combine(directory,
                FormattableString.Invariant($"{stem}.{clock.GetUtcNow():yyyyMMddTHHmmssZ}{(i > 0 ? $".{i}" : "")}{extension}"));
        return path;
    }

    private sealed record SeenFile(string Path, long Length, DateTime WrittenAt, int Looks, bool IsAtRest);
}
