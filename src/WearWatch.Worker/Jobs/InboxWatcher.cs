using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Options;

namespace WearWatch.Worker.Jobs;

/// <summary>Looks into the inbox folder again and again.</summary>
public sealed class InboxWatcher(
    Inbox inbox, IOptions<WearWatchOptions> options, TimeProvider clock, ILogger<InboxWatcher> logger)
    : JobLoop("look into the inbox", options.Value.InboxEvery, clock, logger)
{
    protected override Task RunOnceAsync(CancellationToken ct) => inbox.RunOnceAsync(ct);
}
