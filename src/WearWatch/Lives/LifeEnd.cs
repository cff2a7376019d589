namespace WearWatch.Lives;

/// <summary>
/// How a life ended. Only <see cref="ReachedLimit"/> is a failure; the other two are suspensions (right-censored).
/// </summary>
public enum LifeEnd
{
    /// <summary>The chain reached its replacement limit, whether it was then replaced or still runs.</summary>
    ReachedLimit,

    /// <summary>The chain was taken off before it reached the limit.</summary>
    ReplacedBefore,

    /// <summary>The chain runs and has not reached the limit.</summary>
    StillRunning,
}
