using WearWatch.Plant.Settings;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Administration.Register;

/// <summary>A chain's card as the register has it, with the record of its changes.</summary>
/// <param name="Row">The card.</param>
/// <param name="Changes">The newest changes, newest first.</param>
/// <param name="ChangeCount">How many changes there are.</param>
/// <param name="EarlyDate">The planner's date as it stands; null when the limit is not in sight.</param>
/// <param name="Time">Now.</param>
public sealed record RegisteredCard(
    ChainRow Row, IReadOnlyList<CardChangeRow> Changes, int ChangeCount, DateTimeOffset? EarlyDate, PlantTime Time);
