using Microsoft.Extensions.Options;
using WearWatch.Phrases;
using WearWatch.Plant.Notices;
using WearWatch.Plant.People;
using WearWatch.Plant.Settings;
using WearWatch.Storage.Rows;
using WearWatch.Storage.Safekeeping;

namespace WearWatch.Worker.Jobs;

/// <summary>Makes the night's backup, and raises a notice when one fails or the newest is old.</summary>
public sealed class BackupWatch(
    Backups backups, PlantNoticeDesk notices, SecurityLog log, PlantNight night, DataFolder folder, JobBook book,
    IOptions<WearWatchOptions> options, TimeProvider clock)
{
    /// <summary>The backup in the book of jobs.</summary>
    public const string Job = "backup";

    /// <summary>An older one is told of (common practice: two nights were missed).</summary>
    public static TimeSpan Old { get; } = TimeSpan.FromDays(2);

    /// <summary>Makes a backup, if none was made since the plant's last backup hour.</summary>
    /// <returns>Whether one was made.</returns>
    public async Task<bool> RunOnceAsync(CancellationToken ct = default)
    {
        if (options.Value.BackupFolder is not { Length: > 0 } to) return false;
        var last = await book.DoneAtAsync(Job, ct);
        if (last >= await night.LastAsync(options.Value.BackupHour, ct)) return false;
        try
        {
            await book.RunAsync(Job, stop => MakeAsync(Path.Combine(folder.Root, to), stop), ct);
        }
        catch (Exception e) when (e is not OperationCanceledException)
        {
            await log.AddAsync(SecurityEventKind.BackupFailed, e.Message, Job, ct);
            await notices.RaiseAsync(PlantNoticeKind.BackupMissing, Why(last, e), WhatToDo, ct);
            throw;
        }

        await notices.EndAsync(PlantNoticeKind.BackupMissing, Job, ct);
        return true;
    }

    private static Phrase WhatToDo => $"Look at the folder, its disk and its rights; then run wearwatch backup by hand.";

    private async Task MakeAsync(string to, CancellationToken ct)
    {
        var made = await backups.BackUpAsync(to, options.Value.BackupsKept, ct);
        await log.AddAsync(SecurityEventKind.BackedUp, made.Path, Job, ct);
    }

    private Phrase Why(DateTimeOffset? last, Exception e)
    {
        if (last is { } made && clock.GetUtcNow() - made < Old) return $"The night's backup failed: {e.Message}";
        return last is { } old
            ? Phrase.Of($"The night's backup failed: {e.Message} The newest backup is of {old:yyyy-MM-dd}.")
            : $"The night's backup failed: {e.Message} The newest backup is missing: none was ever made.";
    }
}
