namespace WearWatch.Worker.Mqtt;

/// <summary>How the connection to the broker stands, for the screens of this process.</summary>
public sealed class BrokerLink
{
    /// <summary>Whether it stands now.</summary>
    public bool IsConnected { get; private set; }

    /// <summary>Since when it stands or is lost; null before the first try.</summary>
    public DateTimeOffset? Since { get; private set; }

    /// <summary>Why it is lost; empty while it stands.</summary>
    public string Problem { get; private set; } = "";

    internal void Connected(DateTimeOffset now) => (IsConnected, Since, Problem) = (true, now, "");

    internal void Lost(string why, DateTimeOffset now) =>
        (IsConnected, Since, Problem) = (false, IsConnected || Since is null ? now : Since, why);
}
