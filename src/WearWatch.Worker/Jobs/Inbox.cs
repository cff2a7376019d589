using Microsoft.Extensions.Logging;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Settings;
using WearWatch.Storage.Engines;

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
    /// <summary>
    /// A file that does not come to rest, or one new file after the other, holds those that are complete up for so many looks and
    /// no longer.
    /// </summary>
    private const int MostLooks = 12;

    private const string By = "inbox";

    private Dictionary<string, SeenFile> seen = [];

    /// <summary>Takes in the files that are complete.</summary>
    /// <returns>How many were taken in.</returns>
    public async Task<int> RunOnceAsync(CancellationToken ct = default)
    {
        var now = Directory.EnumerateFiles(folder.Inbox).Where(IsOurs).Select(Look).ToDictionary(f => f.Path);
        seen = now;
        // The register may come last: as long as one file is still being written, those that are complete wait for it.
        if (now.Values.Any(f => !f.IsAtRest && f.Looks < MostLooks) && !now.Values.Any(f => f.IsAtRest && f.Looks > MostLooks))
            return 0;
        var complete = now.Values.Where(f => f.IsAtRest && CanBeTaken(f.Path)).ToList();
        if (complete.Count == 0) return 0;
        try
        {
            return await TakeAsync(complete, ct);
        }
        catch (Exception e) when (complete.Count > 1 && IsOfTheFile(e))
        {
            var taken = 0;
            foreach (var file in complete) taken += await TakeAloneAsync(file, ct);
            return taken;
        }
        catch (Exception e) when (IsOfTheFile(e))
        {
            SetAside(complete[0].Path, e);
            return 0;
        }
    }

    /// <summary>Where one of several cannot be taken in, the others go on without it.</summary>
    private async Task<int> TakeAloneAsync(SeenFile file, CancellationToken ct)
    {
        try
        {
            return await TakeAsync([file], ct);
        }
        catch (Exception e) when (IsOfTheFile(e))
        {
            SetAside(file.Path, e);
            return 0;
        }
    }

    private async Task<int> TakeAsync(IReadOnlyList<SeenFile> files, CancellationToken ct)
    {
        var report = await import.ImportAsync([.. files.Select(f => ImportFile.OnDisk(f.Path, By))], null, ct);
        foreach (var file in report.Files) PutAway(file);
        return report.Files.Count;
    }

    // A full disk, a database that is away or a stop is no fault of the file: it is tried again.
    private static bool IsOfTheFile(Exception e) =>
        e is not OperationCanceledException && StoreFaults.Of(e) == StoreFault.None && e is not IOException;

    private static bool IsOurs(string path) =>
        (path.EndsWith(".csv", StringComparison.OrdinalIgnoreCase) || Workbook.IsNamedSo(path))
        && !Path.GetFileName(path).StartsWith('.');

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

    private void SetAside(string path, Exception why)
    {
        var name = Path.GetFileName(path);
        var target = FreeName(Path.Combine(folder.Inbox, "refused"), name);
        File.WriteAllText(
            target + ".report.txt",
            $"{name} could not be taken in: {why.Message}\nWhat had been taken in before stays. Correct it and drop it again.\n");
        File.Move(path, target);
        logger.FileFailed(why, name);
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
