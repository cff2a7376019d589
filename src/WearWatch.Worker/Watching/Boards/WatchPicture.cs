using WearWatch.Storage.Series.Boards;

namespace WearWatch.Worker.Watching.Boards;

/// <summary>A picture of how the program itself does.</summary>
/// <param name="Title">What it shows.</param>
/// <param name="Note">What to see in it, for a person.</param>
/// <param name="Question">What is asked, in PromQL.</param>
/// <param name="Legend">What stands beside a line; of a label in braces its value.</param>
/// <param name="Unit">The unit, in the words of the board's format.</param>
/// <param name="Style">How it is drawn.</param>
internal sealed record WatchPicture(
    string Title, string Note, string Question, string Legend, string Unit, PanelStyle Style)
{
    /// <summary>All pictures. Each instrument has one.</summary>
    public static IReadOnlyList<WatchPicture> All { get; } =
    [
        new("Health", "2 healthy, 1 degraded, 0 unhealthy. What each check says stands at /health/ready.",
            "min by (wearwatch_check_name) (wearwatch_health_status)", "{{wearwatch_check_name}}", "none", PanelStyle.Steps),
        new("Messages a minute", "By what became of them. Set aside: look at the page Data sources.",
            "60 * sum by (wearwatch_outcome) (rate(wearwatch_telemetry_messages_total[5m]))", "{{wearwatch_outcome}}", "short",
            PanelStyle.Lines),
        new("Lag of telemetry", "From the sender's time to the commit: 19 of 20 messages are faster.",
            "histogram_quantile(0.95, sum by (le) (rate(wearwatch_telemetry_lag_seconds_bucket[5m])))", "19 of 20", "s",
            PanelStyle.Lines),
        new("Sent on a minute", "To the store of time series. None while messages come: the store is away.",
            "60 * sum(rate(wearwatch_telemetry_forwarded_total[5m]))", "messages", "short", PanelStyle.Lines),
        new("Time of jobs", "The mean of an hour, by job.",
            "sum by (wearwatch_job_name) (rate(wearwatch_job_duration_seconds_sum[1h]))"
            + " / sum by (wearwatch_job_name) (rate(wearwatch_job_duration_seconds_count[1h]))",
            "{{wearwatch_job_name}}", "s", PanelStyle.Lines),
        new("Failed jobs an hour", "A job that fails is done again; why it failed stands in the log.",
            "sum by (wearwatch_job_name) (increase(wearwatch_job_duration_seconds_count{error_type!=\"\"}[1h]))",
            "{{wearwatch_job_name}}", "short", PanelStyle.Bars),
        new("Answers a minute", "By status.",
            "60 * sum by (http_response_status_code) (rate(http_server_request_duration_seconds_count[5m]))",
            "{{http_response_status_code}}", "short", PanelStyle.Lines),
        new("Time to answer", "19 of 20 answers are faster.",
            "histogram_quantile(0.95, sum by (le) (rate(http_server_request_duration_seconds_bucket[5m])))", "19 of 20", "s",
            PanelStyle.Lines),
    ];
}
