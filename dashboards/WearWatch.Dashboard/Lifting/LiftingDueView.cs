using WearWatch.Chains;
using WearWatch.Plant.Settings;

namespace WearWatch.Dashboard.Lifting;

/// <summary>The register's list of lifting chains, worst first and soonest due first.</summary>
/// <param name="Lines">The chains.</param>
/// <param name="Region">Whose law the plant stands under.</param>
/// <param name="Time">The plant's time.</param>
public sealed record LiftingDueView(IReadOnlyList<LiftingDueLine> Lines, LawRegion Region, PlantTime Time);
