using WearWatch.Chains.Families;
using WearWatch.Lifting.Examinations;

namespace WearWatch.Plant.Lifting;

/// <summary>A quarantine, a release or a disposal on its way in.</summary>
/// <param name="Key">Given by whoever sends it: the same key sent twice is stored once.</param>
/// <param name="Chain">The chain's name.</param>
/// <param name="Kind">What.</param>
/// <param name="By">Who: of a release the appointed person.</param>
/// <param name="Reason">Why.</param>
/// <param name="Closes">Of a release: the findings that it closes.</param>
public sealed record NewLiftingStep(
    string Key, string Chain, LiftingStepKind Kind, string By, string Reason, IReadOnlyList<InspectionPoint> Closes);
