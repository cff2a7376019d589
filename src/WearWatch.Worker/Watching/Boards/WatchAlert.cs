namespace WearWatch.Worker.Watching.Boards;

/// <summary>A rule by which whoever watches the program is called.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Condition">When it holds, in PromQL.</param>
/// <param name="For">How long it has to hold.</param>
/// <param name="IsCritical">Whether entries may be refused meanwhile.</param>
/// <param name="What">What it means.</param>
/// <param name="WhatToDo">What to do.</param>
internal sealed record WatchAlert(
    string Name, string Condition, string For, bool IsCritical, string What, string WhatToDo)
{
    /// <summary>All rules. The bounds are common practice: a shift notices nothing of what is shorter.</summary>
    public static IReadOnlyList<WatchAlert> All { get; } =
    [
        new("WearWatchSilent", "absent_over_time(wearwatch_health_status[10m])", "5m", IsCritical: true,
            "WearWatch sends no figures.", "See whether the service runs, then whether the collector does."),
        new("WearWatchStoreFails", "min(wearwatch_health_status{wearwatch_check_name=\"store\"}) == 0", "2m", IsCritical: true,
            "The database cannot be written: entries are refused, phones keep theirs.",
            "Look at the disk and the database. Read /health/ready."),
        new("WearWatchDegraded",
            "min by (wearwatch_check_name) (wearwatch_health_status{wearwatch_check_name!=\"store\"}) < 2", "15m",
            IsCritical: false, "A part does not work: {{ $labels.wearwatch_check_name }}.",
            "Read /health/ready: it says what is wrong. Nothing is lost meanwhile."),
        new("WearWatchJobFails",
            "sum by (wearwatch_job_name) (increase(wearwatch_job_duration_seconds_count{error_type!=\"\"}[1h])) > 0", "0m",
            IsCritical: false, "A job failed: {{ $labels.wearwatch_job_name }}.", "Read in the log why. It is done again."),
        new("WearWatchTelemetryLate",
            "histogram_quantile(0.95, sum by (le) (rate(wearwatch_telemetry_lag_seconds_bucket[15m]))) > 300", "30m",
            IsCritical: false, "Messages of machines come more than five minutes late.",
            "Look at the broker and at the senders' clocks."),
        new("WearWatchTelemetrySetAside",
            "sum(increase(wearwatch_telemetry_messages_total{wearwatch_outcome=\"set_aside\"}[1h])) > 0", "15m",
            IsCritical: false, "Messages are set aside.", "Open the page Data sources: it says which and why."),
        new("WearWatchErrors",
            "sum(rate(http_server_request_duration_seconds_count{http_response_status_code=~\"5..\"}[10m]))"
            + " / sum(rate(http_server_request_duration_seconds_count[10m])) > 0.02", "10m",
            IsCritical: false, "More than 2 % of the answers are errors.", "Read the log."),
        new("WearWatchSlow",
            "histogram_quantile(0.95, sum by (le) (rate(http_server_request_duration_seconds_bucket[10m]))) > 1", "15m",
            IsCritical: false, "One answer of twenty takes more than a second.", "Look at processor, memory and disk."),
    ];
}
