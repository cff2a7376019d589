using WearWatch.Plant.Settings;

namespace WearWatch.Dashboard.Overview.Starts;

/// <summary>A start page: what matters today to one trade.</summary>
/// <param name="Facts">Its figures, the most pressing first.</param>
/// <param name="Time">The moment for which they hold.</param>
public sealed record StartView(IReadOnlyList<StartFact> Facts, PlantTime Time);
