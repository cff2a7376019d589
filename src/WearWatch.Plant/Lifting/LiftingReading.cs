using WearWatch.Lifting.Examinations;

namespace WearWatch.Plant.Lifting;

/// <summary>What is concluded of a lifting chain at this moment.</summary>
/// <param name="State">Its state.</param>
/// <param name="Stops">The findings that keep it out of use.</param>
/// <param name="Competent">Who may examine and release it today.</param>
public sealed record LiftingReading(LiftingState State, IReadOnlyList<StopFinding> Stops, IReadOnlyList<string> Competent);
