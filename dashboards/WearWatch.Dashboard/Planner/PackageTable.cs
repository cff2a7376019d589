using WearWatch.Plant.Planning;

namespace WearWatch.Dashboard.Planner;

/// <summary>The swaps of a work package as a list for another system: what a work order there is made from.</summary>
public static class PackageTable
{
    /// <summary>A row for each swap, in their order; its first column names it in what comes back.</summary>
    public static PlanTable Of(StopPackageJson stop) => new(
        "work-package",
        ["swap", "chain", "line", "position", "chain_type", "shutdown", "shutdown_start", "shutdown_end", "start", "hours",
            "fitters", "together", "cut_pitches", "connecting_links", "offset_links", "attachments", "store_number",
            "sprocket_number", "note", "caution"],
        [
            .. stop.Swaps.Select(s => (IReadOnlyList<object?>)[s.Id, s.Chain, stop.Line, s.Position, s.ChainType, stop.Shutdown,
                stop.Start, stop.End, s.Start, s.Hours, string.Join(' ', s.Fitters), string.Join("; ", s.Together),
                s.Kit.CutPitches, s.Kit.ConnectingLinks, s.Kit.OffsetLinks, s.Kit.Attachments, s.Kit.StoreNumber,
                s.Kit.SprocketNumber, s.Note, s.Caution]),
        ]);
}
