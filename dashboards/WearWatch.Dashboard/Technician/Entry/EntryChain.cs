using WearWatch.Plant.Settings;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Technician.Entry;

/// <summary>What the entry page knows of the chain that is measured.</summary>
/// <param name="Row">The chain.</param>
/// <param name="Assessment">What is concluded of it so far.</param>
/// <param name="Last">Its newest reading that counts; null when it has none.</param>
/// <param name="LastCounterH">The newest counter that was told; null when none was.</param>
/// <param name="Corrects">The reading that is to be corrected; null for a new one.</param>
/// <param name="EarlyDate">The planner's date as it stands.</param>
/// <param name="Time">Now.</param>
public sealed record EntryChain(
    ChainRow Row, Assessment Assessment, ReadingRow? Last, double? LastCounterH, ReadingRow? Corrects, DateTimeOffset? EarlyDate,
    PlantTime Time);
