using WearWatch.Dashboard.Kit.Lifting;
using WearWatch.Lifting.Examinations;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Lifting;

/// <summary>A lifting chain in the register's list.</summary>
/// <param name="Chain">The chain.</param>
/// <param name="Card">Its newest entry; null for none.</param>
/// <param name="State">Its state.</param>
/// <param name="Now">What is said of it.</param>
/// <param name="Interval">The interval of its thorough examination.</param>
public sealed record LiftingDueLine(
    ChainRow Chain, LiftingCardRow? Card, LiftingState State, LiftingNow Now, ExaminationInterval Interval);
