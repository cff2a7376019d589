using WearWatch.Plant.Files;

namespace WearWatch.Dashboard.Administration.Importing;

/// <summary>What a file holds, in words.</summary>
public static class ImportWords
{
    public static string Of(FileKind kind) => kind switch
    {
        FileKind.Chains => T["chains"],
        FileKind.Readings => T["readings"],
        FileKind.Events => T["events"],
        FileKind.LinkMeasures => T["measures of links"],
        FileKind.PartReadings => T["readings of parts"],
        FileKind.WorkOrders => T["work orders"],
        _ => T["not known from its header"],
    };
}
