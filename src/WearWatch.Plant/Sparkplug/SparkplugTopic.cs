namespace WearWatch.Plant.Sparkplug;

/// <summary>
/// The topics by which an edge node of Sparkplug B 3.0 tells: <c>spBv1.0/{group}/{NBIRTH|NDEATH|NDATA}/{node}</c>, and
/// <c>DBIRTH</c>, <c>DDEATH</c>, <c>DDATA</c> with a device behind it.
/// </summary>
/// <param name="Group">The group.</param>
/// <param name="Type">What kind of message it is.</param>
/// <param name="Node">The edge node.</param>
/// <param name="Device">Its device; empty for the node's own messages.</param>
public sealed record SparkplugTopic(string Group, string Type, string Node, string Device)
{
    /// <summary>The first level of all of them.</summary>
    public const string Root = "spBv1.0";

    /// <summary>What a host application subscribes to.</summary>
    public const string Filter = Root + "/#";

    /// <summary>
    /// Reads a topic; null when no edge node tells under it, as under those of commands and of hosts, or a name is too long.
    /// </summary>
    public static SparkplugTopic? Read(string topic) => topic.Split('/') switch
    {
        var levels when Array.Exists(levels, level => level.Length > SparkplugName.LongestLevel) => null,
        [Root, var group, ("NBIRTH" or "NDEATH" or "NDATA") and var type, var node] => new(group, type, node, ""),
        [Root, var group, ("DBIRTH" or "DDEATH" or "DDATA") and var type, var node, var device] => new(group, type, node, device),
        _ => null,
    };

    /// <summary>Whether a topic is Sparkplug's at all, its hosts' too.</summary>
    public static bool IsIn(string topic) => topic.StartsWith(Root + "/", StringComparison.Ordinal);

    /// <summary>Where a host says whether it is online.</summary>
    public static string StateOf(string host) => $"{Root}/STATE/{host}";

    /// <summary>Where a node takes commands.</summary>
    public static string CommandOf(string group, string node) => $"{Root}/{group}/NCMD/{node}";
}
