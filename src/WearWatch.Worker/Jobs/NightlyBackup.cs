using Microsoft.Extensions.Logging;

namespace WearWatch.Worker.Jobs;

/// <summary>Looks again and again whether the night's backup is to be made.</summary>
public sealed class NightlyBackup(BackupWatch watch, JobBook book, ILogger<NightlyBackup> logger)
    : RegularJob("look for the night's backup", book, logger)
{
    protected override Task RunOnceAsync(CancellationToken ct) => watch.RunOnceAsync(ct);
}
