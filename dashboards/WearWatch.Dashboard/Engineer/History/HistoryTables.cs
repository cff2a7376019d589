using Microsoft.EntityFrameworkCore;
using WearWatch.Dashboard.Engineer.History.Tables;
using WearWatch.Plant.Books;
using WearWatch.Storage;

namespace WearWatch.Dashboard.Engineer.History;

/// <summary>
/// The tables of the open data door: the register, all that was told, all that was forecast, and the lives that follow.
/// </summary>
public sealed class HistoryTables(IDbContextFactory<WearDb> databases, LifeBook book)
{
    /// <summary>All tables.</summary>
    public IReadOnlyList<HistoryTable> All { get; } =
    [
        ChainTable.Of(databases), ReadingTable.Of(databases), EventTable.Of(databases), InspectionTable.Of(databases),
        LinkMeasureTable.Of(databases), PartReadingTable.Of(databases), ExaminationTable.Of(databases),
        LiftingStepTable.Of(databases), ForecastTable.Of(databases),
        NoticeTable.Of(databases), NoticeStepTable.Of(databases), LifeTable.Of(book),
    ];

    /// <summary>The table of a name; null when there is none.</summary>
    public HistoryTable? Of(string name) => All.FirstOrDefault(t => t.Name == name);
}
