using WearWatch.Plant.Settings;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Kit.Words;

/// <summary>How an edge node of Sparkplug stands, in words.</summary>
public static class EdgeNodeWords
{
    /// <summary>Whether it is online or dead, and since when.</summary>
    public static Phrase Of(SparkplugNodeRow node, PlantTime time) => node switch
    {
        { Since: null } => $"births asked for",
        { IsOnline: false } => $"dead since {time.Moment(node.Since.Value)}",
        { WantsBirth: true } => $"online since {time.Moment(node.Since.Value)}, births asked for",
        _ => $"online since {time.Moment(node.Since.Value)}",
    };
}
