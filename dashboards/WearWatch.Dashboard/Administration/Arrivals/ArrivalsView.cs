using WearWatch.Signals;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Administration.Arrivals;

/// <summary>What one chain sends of one kind.</summary>
/// <param name="Chain">The chain's name.</param>
/// <param name="Kind">The kind.</param>
/// <param name="LastAt">The newest hour in which something came.</param>
/// <param name="LastDay">Messages of the last 24 hours.</param>
/// <param name="LateBy">How long it has been silent, when that is longer than it was used to be; null when it is on time.</param>
public sealed record SourceLine(string Chain, TelemetryKind Kind, DateTimeOffset LastAt, long LastDay, TimeSpan? LateBy);

/// <summary>A message that was set aside.</summary>
/// <param name="Id">Its row.</param>
/// <param name="Topic">Where it was published.</param>
/// <param name="Payload">What it says, cut to what a person reads.</param>
/// <param name="Reason">Why it was set aside.</param>
/// <param name="Times">How often it came.</param>
/// <param name="LastAt">When it came last.</param>
public sealed record AsideLine(long Id, string Topic, string Payload, Phrase Reason, int Times, DateTimeOffset LastAt);

/// <summary>How the sending on to the store of time series stands.</summary>
/// <param name="Waiting">Messages that wait.</param>
/// <param name="Refused">Messages that the store refused.</param>
/// <param name="LastReason">Why it refused the last of them; empty when none.</param>
/// <param name="Trouble">Why nothing goes on at the moment; null while all is well.</param>
public sealed record SentOnState(int Waiting, int Refused, string LastReason, string? Trouble);

/// <summary>What the page Arrivals shows.</summary>
/// <param name="Sources">What arrives, the late ones first.</param>
/// <param name="Aside">What was set aside and waits, the newest first.</param>
/// <param name="AsideCount">How many wait in all.</param>
/// <param name="Broker">How the way of the messages stands, in words.</param>
/// <param name="BrokerIsWell">Whether it stands.</param>
/// <param name="SentOn">How the sending on to the store of time series stands; null where none is set.</param>
public sealed record ArrivalsView(
    IReadOnlyList<SourceLine> Sources, IReadOnlyList<AsideLine> Aside, int AsideCount, Phrase Broker, bool BrokerIsWell,
    SentOnState? SentOn)
{
    /// <summary>Edge nodes of Sparkplug, the dead ones first.</summary>
    public required IReadOnlyList<SparkplugNodeRow> Nodes { get; init; }

    /// <summary>How many sources are late.</summary>
    public int Late => Sources.Count(s => s.LateBy is not null);
}
